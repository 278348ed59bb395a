"""Running clearances, wear and walls."""
from . import G, math, np, relation


def angular(speed):
    return speed * (math.pi / 30)


@relation()
def ring_head_difference(rim, speed, impeller, ring, core):
    w = core * angular(speed)
    return rim - w * w * (impeller * impeller - ring * ring) * (1e-6 / (8 * G))


@relation()
def ring_clearance_leakage(head, diameter, clearance, length, speed, viscosity, end_loss, stated):
    e, nu = clearance / 1000, viscosity * 1e-6  # no friction factor given: from the gap's own, by Newton's steps
    slenderness = length / (2 * clearance)
    rim = math.pi / 60000 * diameter * speed
    available = 2 * G * head
    v = np.sqrt(available / (end_loss + 0.02 * slenderness))
    for _ in range(12):
        turning = 7 / 16 * rim / v
        friction = 0.316 / np.sqrt(np.sqrt(2 * e * v / nu)) * (1 + turning * turning) ** 0.375
        v = np.sqrt(available / (end_loss + friction * slenderness))
    return math.pi * diameter * clearance * v * (1e-6 * 3600), v, friction


@relation()
def vane_edge_leakage(flow, head, hydraulic, speed, vanes, clearance, impeller, diameter, width, length, density):
    w = angular(speed)
    moment = G * head / (hydraulic * w)
    load = density * (flow / 3600) * moment / (vanes * diameter * width * length) * 2e9
    velocity = 0.816 * np.sqrt(2 * load / density)
    leakage = vanes * clearance * length * velocity * 0.0036
    return leakage, leakage / flow * velocity * w * impeller / (4000 * G), load * 1e-5


@relation()
def vane_clearance_head_loss(flow, head, hydraulic, speed, vanes, clearance, impeller, width, eye):
    swirl = G * head * 2000 / (hydraulic * angular(speed) * impeller)
    through = flow * (4e6 / 3600) / (width * vanes * (impeller - eye))
    loss = 0.6 / G * clearance / width * swirl * np.sqrt(through * swirl)
    return loss, loss / head


@relation()
def clearance_head_ratio(clearance, reference, width, slope):
    return 1 - slope * (clearance - reference) / width


@relation()
def clearance_efficiency_ratio(clearance, reference, width, slope):
    return 1 - slope * (clearance - reference) / width


@relation()
def leakage_efficiency_ratio(flow, leakage, reference):
    return (flow + reference) / (flow + leakage)


@relation()
def clearance_power_penalty(flow, head, density, efficiency, ratio, motor):
    extra = density * flow * head * (G / 3.6e6) / efficiency * ((1 - ratio) / ratio)
    return extra, extra / motor


@relation()
def clearance_from_head_loss(lost, uncertain, reference, width, slope):
    per = width / slope
    return tuple(np.maximum(reference + per * part, 0) for part in (lost, lost - uncertain, lost + uncertain))


@relation()
def clearance_adjustment(now, wanted, lead, divisions):
    move = now - wanted
    exact = move / lead * divisions
    whole = np.floor(exact + 1e-9)
    return np.where(whole > 0, 0.0, np.where(whole < 0, 1.0, 2.0)), move, exact, whole, now - whole / divisions * lead


@relation()
def hot_running_clearance(cold, dimension, turning, turning_at, still, still_at, cold_at):
    change = dimension * 1e-6 * (still * (still_at - cold_at) - turning * (turning_at - cold_at))
    return cold + change, change


@relation()
def clearance_wear(start, now, since, limit):
    rate = (now - start) / since
    return rate * 12, (limit - now) / rate


@relation()
def clearance_payback(power, hours, price, cost):
    yearly = power * hours * price
    return yearly, 12 * cost / yearly


@relation(since=(20, 40))
def clearance_reset_interval(power, since, hours, price, cost):
    years = since / 12
    growth = power * hours * price / years
    best = np.sqrt(2 * cost / growth)
    return np.where(years >= best, 0.0, 1.0), 12 * best, 12 * (best - years), best * growth


@relation()
def corrosion_rate(loss, area, exposure, density):
    return loss / (area * exposure * density) * (10000 * 8760)


@relation()
def corrosion_life(wall, needed, rate):
    spare = wall - needed
    return spare / rate, spare


@relation(allowance=(0, 3), tolerance=(0, 0.125))
def wall_needed(pressure, diameter, stress, joint, coefficient, allowance, tolerance):
    wall = pressure * diameter / (2 * (10 * stress * joint + pressure * coefficient))
    return wall, (wall + allowance) / (1 - tolerance)
