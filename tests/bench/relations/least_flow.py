"""Heating at low flow, regions, bypass."""
from . import G, math, np, relation


@relation()
def temperature_rise(head, efficiency, heat):
    return G * head / (heat * 1000) * (1 / efficiency - 1)


@relation()
def compression_temperature_rise(head, heat, expansion, inlet):
    return (inlet + 273.15) * expansion * G * head / (heat * 1000)


@relation()
def total_temperature_rise(head, efficiency, heat, expansion, inlet):
    return G * head / (heat * 1000) * (1 / efficiency - 1 + expansion * (inlet + 273.15))


@relation()
def temperature_rise_at_flow(power, flow, head, density, heat):
    return (power * 1000 / (density * (flow / 3600)) - G * head) / (heat * 1000)


@relation()
def thermal_minimum_flow(power, head, density, heat, rise):
    return power * 1000 / (density * (heat * 1000 * rise + G * head)) * 3600


@relation()
def closed_valve_heating_rate(power, volume, density, heat, mass, metal_heat):
    return power * 60 / (volume / 1000 * density * heat + mass * metal_heat)


@relation()
def time_to_temperature(rate, start, end):
    return (end - start) / rate


@relation(hub=(0, 30))
def suction_recirculation_flow(eye, hub, speed, ratio, eyes):
    tip = np.pi / 60000 * eye * speed
    return eyes * ratio * tip * np.pi / 4 * (eye**2 - hub**2) * 1e-6 * 3600




@relation(specific_speed=(20, 120))
def preferred_region(best, specific_speed):
    broad = specific_speed <= 87.1
    return np.where(broad, 0.70, 0.80) * best, np.where(broad, 1.20, 1.15) * best


@relation(flow=(20, 140), specific_speed=(20, 120))
def operating_region(flow, best, specific_speed, low, high):
    broad = specific_speed <= 87.1
    least, greatest = np.where(broad, 0.70, 0.80) * best, np.where(broad, 1.20, 1.15) * best
    preferred = (flow >= least) & (flow <= greatest)
    return np.where((flow >= low) & (flow <= high), np.where(preferred, 0.0, 1.0), 2.0), least, greatest


class Plate:
    """An orifice plate of ISO 5167-2 with taps at D and D/2."""

    def __init__(self, bore, pipe):
        self.b = b = bore / pipe
        self.bore, self.pipe = bore, pipe
        self.b2 = b * b
        self.b4 = self.b2 * self.b2
        m = 0.94 / (1 - b)
        self.steady = 0.5961 + 0.0261 * self.b2 - 0.216 * self.b4 * self.b4 - 0.031 * (m - 0.8 * m**1.1) * b**1.3
        self.steady = self.steady + np.where(pipe < 71.12, 0.011 * (0.75 - b) * (2.8 - pipe / 25.4), 0)
        self.taps = (0.043 + 0.080 * math.exp(-10) - 0.123 * math.exp(-7)) * self.b4 / (1 - self.b4)
        self.b35 = self.b2 * b * np.sqrt(b)

    def coefficient(self, reynolds):
        a = (19000 * self.b / reynolds) ** 0.8
        return (self.steady + 0.000521 * (1e6 * self.b / reynolds) ** 0.7
                + (0.0188 + 0.0063 * a) * self.b35 * (1e6 / reynolds) ** 0.3 + self.taps * (1 - 0.11 * a))

    def loss_ratio(self, c):
        root = np.sqrt(1 - self.b4 * (1 - c * c))
        part = c * self.b2
        return (root - part) / (root + part)

    def flow(self, c, loss, density):
        """m3/s; loss in bar"""
        return (c / np.sqrt(1 - self.b4) * (math.pi / 4e6) * self.bore * self.bore
                * np.sqrt(2e5 * loss / self.loss_ratio(c) / density))

    def reynolds(self, flow, viscosity):
        return flow * (4e9 / math.pi) / (self.pipe * viscosity)

    def passing(self, loss, density, viscosity, rounds=8):
        c = np.full_like(self.b, 0.6)
        for _ in range(rounds):
            flow = self.flow(c, loss, density)
            reynolds = self.reynolds(flow, viscosity)
            c = self.coefficient(reynolds)
        return flow, c, reynolds


PLATE = dict(bore=(15, 25), viscosity=(0.8, 1.2), stated=(0, 0))


@relation(**PLATE)
def bypass_flow(bore, pipe, upstream, downstream, vapour, density, viscosity, stated):
    plate, loss = Plate(bore, pipe), upstream - downstream
    flow, c, reynolds = plate.passing(loss, density, viscosity)
    limit = plate.loss_ratio(c) * (upstream - vapour)
    choked = loss >= limit
    if choked.any():  # with the drop at which it chokes, which hangs a little on its own flow
        for _ in range(3):
            flow, c, reynolds = plate.passing(np.where(choked, limit, loss), density, viscosity, 3)
            limit = plate.loss_ratio(c) * (upstream - vapour)
    return flow * 3600, c, reynolds, limit, choked.astype(float)


@relation(viscosity=(0.8, 1.2), stated=(0, 0))
def bypass_orifice_bore(flow, pipe, upstream, downstream, vapour, density, viscosity, stated):
    loss, above = upstream - downstream, upstream - vapour
    q = flow / 3600
    reynolds = q * (4e9 / math.pi) / (pipe * viscosity)

    def surplus(ratio):
        plate = Plate(ratio * pipe, pipe)
        c = plate.coefficient(reynolds)
        return plate.flow(c, np.minimum(loss, plate.loss_ratio(c) * above), density) / q - 1

    near, ratio = np.full_like(flow, 0.45), np.full_like(flow, 0.5)  # secant steps
    off_near = surplus(near)
    for _ in range(8):
        off = surplus(ratio)
        with np.errstate(invalid="ignore", divide="ignore"):
            step = np.where(off == off_near, 0, off * (ratio - near) / (off - off_near))
        near, off_near, ratio = ratio, off, np.clip(ratio - step, 0.1, 0.75)
    plate = Plate(ratio * pipe, pipe)
    choked = loss >= plate.loss_ratio(plate.coefficient(reynolds)) * above
    return ratio * pipe, choked.astype(float)


@relation(**PLATE)
def bypass_orifice_cavitation(bore, pipe, upstream, downstream, vapour, density, viscosity, stated):
    plate, loss = Plate(bore, pipe), upstream - downstream
    flow, c, _ = plate.passing(loss, density, viscosity)
    recovered = plate.loss_ratio(c)
    cv = 3600 * flow * np.sqrt(density / 1000 / loss) * (1 / 0.865)
    share = loss / (upstream - vapour)
    onset = 0.90 / np.sqrt(1 + 3 * np.sqrt(cv / (1.17 * np.sqrt(recovered)))) * (6 / upstream) ** 0.125
    found = np.where(share >= onset, 1.0, 0.0)
    found = np.where(upstream - loss / recovered <= vapour, 2.0, found)
    return share, onset, np.where(downstream <= vapour, 3.0, found)


INVERSE = -1 / (np.array([80, 90, 100, 110]) + 273.15)
LOG = np.log([0.4741472, 0.7018236, 1.01418, 1.43376])


@relation(inlet=(81, 89))
def allowed_temperature_rise(inlet, available, required, margin, density):
    allowed = np.exp(np.interp(-1 / (inlet + 273.15), INVERSE, LOG)) + density * (G * 1e-5) * (available - required - margin)
    return -1 / np.interp(np.log(allowed), LOG, INVERSE) - 273.15 - inlet
