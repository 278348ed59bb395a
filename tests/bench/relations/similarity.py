"""Affinity, trim, specific speeds, efficiencies."""
from . import G, math, np, relation


@relation()
def flow_at_speed(flow, speed, new):
    return flow * (new / speed)


@relation()
def head_at_speed(head, speed, new):
    return head * (new / speed) ** 2


@relation()
def power_at_speed(power, speed, new):
    ratio = new / speed
    return power * ratio * ratio * ratio


@relation(exponent=(1.3, 2))
def npsh3_at_speed(npsh3, speed, new, exponent):
    return npsh3 * (new / speed) ** exponent


@relation(once=("speed", "exponent"), new=(1400, 2900), given=dict(exponent=1.8))  # with 2 NumPy would square
def npsh3_at_speed(npsh3, speed, new, exponent):
    return npsh3 * (new / speed) ** exponent


@relation(trimmed=(215, 240), exponent=(1, 2))
def flow_at_trim(flow, diameter, trimmed, exponent):
    return flow * (trimmed / diameter) ** exponent


@relation(trimmed=(215, 240), exponent=(2, 3))
def head_at_trim(head, diameter, trimmed, exponent):
    return head * (trimmed / diameter) ** exponent


@relation(trimmed=(215, 240), exponent=(3, 4))
def power_at_trim(power, diameter, trimmed, exponent):
    return power * (trimmed / diameter) ** exponent


US_OVER_METRIC = math.sqrt(60 / 0.003785411784) * 0.3048**0.75
TYPE_OVER_METRIC = 2 * math.pi / 60 / G**0.75


def metric(speed, flow, head, eyes=1, stages=1):
    return speed * np.sqrt(flow / 3600 / eyes) / (head / stages) ** 0.75


@relation()
def specific_speed(speed, flow, head, eyes, stages):
    return metric(speed, flow, head, eyes, stages)


@relation()
def specific_speed_us(speed, flow, head, eyes, stages):
    return US_OVER_METRIC * metric(speed, flow, head, eyes, stages)


@relation()
def type_number(speed, flow, head, eyes, stages):
    return TYPE_OVER_METRIC * metric(speed, flow, head, eyes, stages)


@relation()
def suction_specific_speed(speed, flow, npsh3, eyes):
    return metric(speed, flow, npsh3, eyes)


@relation()
def suction_specific_speed_us(speed, flow, npsh3, eyes):
    return US_OVER_METRIC * metric(speed, flow, npsh3, eyes)


@relation()
def specific_speed_from_us(us):
    return us / US_OVER_METRIC


@relation()
def specific_speed_from_type_number(number):
    return number / TYPE_OVER_METRIC


@relation()
def specific_speed_us_from_metric(metric_speed):
    return metric_speed * US_OVER_METRIC


@relation()
def specific_speed_us_from_type_number(number):
    return number * (US_OVER_METRIC / TYPE_OVER_METRIC)


@relation()
def type_number_from_specific_speed(metric_speed):
    return metric_speed * TYPE_OVER_METRIC


@relation()
def type_number_from_us(us):
    return us * (TYPE_OVER_METRIC / US_OVER_METRIC)


@relation()
def tip_speed(diameter, speed):
    return np.pi / 60000 * diameter * speed


@relation()
def head_coefficient(head, diameter, speed):
    return G * head / tip_speed_of(diameter, speed) ** 2


def tip_speed_of(diameter, speed):
    return np.pi / 60000 * diameter * speed


@relation()
def flow_coefficient(flow, diameter, width, speed):
    return flow / 3600 / (np.pi * diameter * width * 1e-6 * tip_speed_of(diameter, speed))


@relation()
def specific_diameter(flow, head, diameter):
    return diameter / 1000 * (G * head) ** 0.25 / np.sqrt(flow / 3600)


@relation(flow=(80, 120), head=(25, 40), nominal_speed=(1450, 1450), index=(0.4, 0.4))
def minimum_efficiency_eu(flow, head, nominal_speed, index, stages):
    x = np.log(metric(nominal_speed, flow, head, 1, stages))
    y = np.log(flow)
    best = -11.48 * x * x - 0.85 * y * y - 0.38 * x * y + 88.59 * x + 13.46 * y - 128.07
    return best / 100, 0.947 * best / 100, 0.985 * best / 100


@relation(flow=(50, 400), head=(20, 100))
def attainable_efficiency(flow, head, speed):
    shape = metric(speed, flow, head)
    size = 3600 / flow
    large = np.where(flow > 3600, 0.5, 1.0)
    m = 0.1 * large * size**0.15 * (45 / shape) ** 0.06
    away = 0.35 - np.log10(shape / 23)
    return 1 - 0.095 * size**m - 0.3 * away * away * size**0.05


@relation(diameter=(248, 252), trimmed=(240, 247))
def point_at_small_trim(flow, head, diameter, trimmed, inlet):
    hub = inlet * inlet
    square = (trimmed * trimmed - hub) / (diameter * diameter - hub)
    return flow * np.sqrt(square), head * square


@relation()
def npsh3_at_trim(at_greatest, greatest, at_least, least, trimmed):
    return at_greatest + (greatest - trimmed) / (greatest - least) * (at_least - at_greatest)


@relation(specific_speed=(10, 300))
def impeller_form(specific_speed):
    return np.where(specific_speed < 40, 0.0, np.where(specific_speed < 175, 1.0, 2.0))


@relation(flow=(20, 1000))
def usual_efficiency(flow):
    y = np.log(flow * 4.402867539)
    return -0.316 + y * (0.24015 - 0.01199 * y)
