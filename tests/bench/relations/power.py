"""Power, motors, energy, money."""
from . import G, math, np, relation


def hydraulic(flow, head, density):
    return density * G * (flow / 3600) * head / 1000


@relation()
def hydraulic_power(flow, head, density):
    return hydraulic(flow, head, density)


@relation()
def pump_power_input(flow, head, density, efficiency):
    return hydraulic(flow, head, density) / efficiency


@relation()
def pump_efficiency(flow, head, density, power):
    return hydraulic(flow, head, density) / power


@relation()
def shaft_torque(power, speed):
    return power * 1000 / (speed * (2 * np.pi / 60))


@relation()
def motor_efficiency_at_load(rated, load, constant_share):
    losses = (1 / rated - 1) * (constant_share + (1 - constant_share) * load**2)
    return load / (load + losses)


@relation()
def synchronous_speed(frequency, poles):
    return 120 * frequency / poles


@relation()
def motor_speed(frequency, poles, slip):
    return 120 * frequency / poles * (1 - slip)


@relation()
def motor_current(power, voltage, efficiency, power_factor):
    return power * 1000 / (math.sqrt(3) * voltage * efficiency * power_factor)


@relation()
def electrical_power(power, motor, drive):
    return power / (motor * drive)


@relation()
def overall_efficiency(pump, motor, drive):
    return pump * motor * drive


@relation()
def wire_to_water_efficiency(flow, head, density, power):
    return hydraulic(flow, head, density) / power


@relation()
def specific_energy(head, density, efficiency):
    return density * G * head / efficiency / 3.6e6


@relation()
def specific_energy_from_power(power, flow):
    return power / flow


@relation()
def annual_energy_cost(energy, price):
    return energy * price


@relation()
def carbon_emission(energy, factor):
    return energy * factor


@relation()
def present_value_factor(interest, years, inflation):
    ratio = (1 + inflation) / (1 + interest)
    return ratio * (1 - ratio**years) / (1 - ratio)


@relation(interest=(0.05, 0.1))
def payback_time(outlay, saving, interest):
    return -np.log1p(-interest * outlay / saving) / np.log1p(interest)


@relation(new_flow=(60, 95), once=("static",))
def cube_law_power(power, flow, new_flow, static):
    return power * (new_flow / flow) ** 3


@relation(rating=(2, 100))
def motor_power_margin(rating):  # ISO 13709
    return np.where(rating < 22, 1.25, np.where(rating <= 55, 1.15, 1.10))


TRADE = np.array([0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3, 4, 5.5, 7.5, 11, 15, 18.5, 22, 30, 37, 45, 55, 75, 90, 110, 132, 160,
                  200, 250, 315, 355, 400, 450, 500, 560, 630, 710, 800, 900, 1000.0])
CARRIES = TRADE / np.where(TRADE < 22, 1.25, np.where(TRADE <= 55, 1.15, 1.10))


@relation(power=(1, 200))
def motor_rating_needed(power):  # ISO 13709, the trade's ratings
    rating = TRADE[np.searchsorted(CARRIES, power)]
    return rating, rating / power


def to_a_tenth(percent):
    return np.floor(10 * percent + 0.5) / 1000


IE3 = np.array([(0.3569, -3.3076, 11.6108, 82.2503), (0.0773, -1.8951, 9.2984, 83.7025), (0.1252, -2.613, 11.9963, 80.4769),
                (0.7189, -5.1678, 15.705, 77.074)]).T  # 0.75 to 200 kW at 50 Hz; 2, 4, 6 and 8 poles


@relation(rating=(1, 180), frequency=(50, 50))
def motor_efficiency(rating, poles, frequency):
    a, b, c, d = IE3[:, poles.astype(int) // 2 - 1]
    x = np.log10(rating)
    return to_a_tenth(((a * x + b) * x + c) * x + d)


def of_four_poles(rating, poles, frequency):
    x = np.log10(rating)
    return to_a_tenth(((0.0773 * x - 1.8951) * x + 9.2984) * x + 83.7025)


of_four_poles.__name__ = "motor_efficiency"
relation(rating=(1, 180), once=("poles", "frequency"))(of_four_poles)

RATED_60_HZ = np.array([0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3.7, 5.5, 7.5, 11, 15, 18.5, 22, 30, 37, 45, 55, 75, 90, 110, 150, 185])
IE3_60_HZ = np.array([66, 69.5, 73.4, 78.2, 81.1, 83.5, 86.5, 86.5, 89.5, 89.5, 91.7, 91.7, 92.4, 93, 93.6, 93.6, 94.1, 94.5, 95, 95.4, 95.4, 95.4,
                      95.8, 96.2, 96.2]) / 100  # 4 poles
MIDDLES = (RATED_60_HZ[1:] + RATED_60_HZ[:-1]) / 2


def at_60_hz(rating, poles, frequency):
    return IE3_60_HZ[np.searchsorted(MIDDLES, rating, side="right")]


at_60_hz.__name__ = "motor_efficiency"
relation(rating=(1, 180), once=("poles", "frequency"), given={"frequency": 60.0})(at_60_hz)


@relation(rating=(1, 300))
def motor_class_required_eu(rating, poles):  # three-phase, from July 2023
    return np.where(rating < 0.75, 1.0, np.where((rating >= 75) & (rating <= 200) & (poles <= 6), 3.0, 2.0))


LOADS = np.array([0.016, 0.125, 0.25, 0.42, 0.5, 0.75, 1])
RATINGS_HP = np.array([3, 5, 10, 20, 30, 50, 60, 75, 100, 200, 400.0])
DRIVES = np.array([(31, 77, 86, 90, 91, 93, 94), (35, 80, 88, 91, 92, 94, 95), (41, 83, 90, 93, 94, 95, 96), (47, 86, 93, 94, 95, 96, 97),
                   (50, 88, 93, 95, 95, 96, 97), (46, 86, 92, 95, 95, 96, 97), (51, 87, 92, 95, 95, 96, 97), (47, 86, 93, 95, 96, 97, 97),
                   (55, 89, 94, 95, 96, 97, 97), (61, 91, 95, 96, 96, 97, 97), (61, 91, 95, 96, 96, 97, 97.0)])


@relation(rating=(3, 200), load=(0.1, 1))
def drive_efficiency(rating, load):
    hp = rating / 0.74569987158227022
    i = np.clip(np.searchsorted(RATINGS_HP, hp, side="right") - 1, 0, len(RATINGS_HP) - 2)
    k = np.clip(np.searchsorted(LOADS, load, side="right") - 1, 0, len(LOADS) - 2)
    u = np.clip((hp - RATINGS_HP[i]) / (RATINGS_HP[i + 1] - RATINGS_HP[i]), 0, 1)
    v = (load - LOADS[k]) / (LOADS[k + 1] - LOADS[k])
    lower = DRIVES[i, k] + v * (DRIVES[i, k + 1] - DRIVES[i, k])
    upper = DRIVES[i + 1, k] + v * (DRIVES[i + 1, k + 1] - DRIVES[i + 1, k])
    return (lower + u * (upper - lower)) / 100


def annuity(growth, interest, years):
    q = (1 + growth) / (1 + interest)
    return q * (q**years - 1) / (q - 1), q**years


@relation(interest=(0.06, 0.1), inflation=(0.02, 0.04), rise=(0.0, 0.01), disposal=(100, 500))
def life_cycle_cost(purchase, installation, energy, operation, maintenance, downtime, environment, disposal, interest, years, inflation, rise):
    factor, end = annuity(inflation, interest, years)
    value = annuity((1 + inflation) * (1 + rise) - 1, interest, years)[0] * energy
    return purchase + installation + value + factor * (operation + maintenance + downtime + environment) + end * disposal, value
