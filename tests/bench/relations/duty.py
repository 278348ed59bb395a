"""What the suction allows, offers compared."""
from . import G, math, np, relation
from .power import annuity


@relation()
def least_speed_against_static_head(shutoff, speed, static_head):
    return speed * np.sqrt(static_head / shutoff)


@relation()
def greatest_speed_by_suction(flow, npsh3, suction_specific_speed, eyes):
    return suction_specific_speed * npsh3**0.75 / np.sqrt(flow / 3600 / eyes)


@relation()
def npsh3_expected(speed, flow, suction_specific_speed, eyes):
    return (speed * np.sqrt(flow / 3600 / eyes) / suction_specific_speed) ** (4 / 3)


@relation()
def npsh3_verdict(measured, uncertainty, guaranteed):
    most = measured + uncertainty
    return np.where(most <= guaranteed, 0.0, 1.0), most, guaranteed - most


@relation(interest=(0.06, 0.1), inflation=(0.02, 0.04), rise=(0.0, 0.01))
def two_offers(purchase_1, energy_1, upkeep_1, purchase_2, energy_2, upkeep_2, price, interest, years, inflation, rise):
    factor = annuity(inflation, interest, years)[0]
    energy_factor = annuity((1 + inflation) * (1 + rise) - 1, interest, years)[0] * price
    first = purchase_1 + energy_factor * energy_1 + factor * upkeep_1
    second = purchase_2 + energy_factor * energy_2 + factor * upkeep_2
    difference = second - first
    return np.where(difference == 0, 2.0, np.where(difference > 0, 0.0, 1.0)), first, second, difference


@relation()
def gas_share_at_pressure(share, pressure, new_pressure):
    gas = share * (pressure / new_pressure)
    return gas / (gas + 1 - share)


@relation()
def npsh3_with_gas(npsh3, share, rise):
    return npsh3 * (1 + rise * 100 * share)


@relation(share=(0, 0.04))
def head_with_gas(head, share):
    ratio = np.interp(share, [0, 0.02, 0.04], [1, 0.88, 0.60])
    return head * ratio, ratio
