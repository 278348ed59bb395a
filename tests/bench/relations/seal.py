"""The seal's chamber and faces."""
from . import G, math, np, relation


def angular(speed):
    return speed * (math.pi / 30)


@relation()
def seal_chamber_pressure(suction, discharge, fraction, ambient):
    chamber = suction + fraction * (discharge - suction)
    return chamber, chamber + ambient


@relation()
def balance_hole_chamber_pressure(suction, difference, ring, clearance, holes, hole, ratio, ambient):
    areas = holes * 0.25 * hole * hole / (ring * clearance)
    effective = ratio * areas
    chamber = suction + difference / (1 + effective * effective)
    return chamber, chamber + ambient, areas


@relation(impeller=(200, 206), vanes=(190, 200), rim=(6, 7))
def back_vane_chamber_pressure(suction, rim, density, speed, impeller, vanes, inner, height, gap, core, ambient):
    w = angular(speed)
    half = density * w * w * (0.125e-11)
    outer, vane, shaft = impeller * impeller, vanes * vanes, inner * inner
    between = core + (1 - core) * (height / (height + gap))
    at_vanes = rim - half * core * core * (outer - vane)
    chamber = suction + at_vanes - half * between * between * (vane - shaft)
    force = ((outer - vane) * (rim - 0.5 * half * core * core * (outer - vane))
             + (vane - shaft) * (at_vanes - 0.5 * half * between * between * (vane - shaft)))
    return chamber, chamber + ambient, math.pi / 40 * force


@relation()
def seal_barrier_pressure(chamber, margin, ambient):
    barrier = chamber + margin
    return barrier, barrier + ambient


@relation()
def seal_balance_ratio(outer, inner, balance):  # pressure outside
    square = outer * outer
    return (square - balance * balance) / (square - inner * inner)


@relation()
def seal_face_speed(outer, inner, speed):
    return math.pi / 120000 * (outer + inner) * speed


def face_area(outer, inner):
    return math.pi / 4 * (outer * outer - inner * inner)


@relation()
def seal_face_pressure(sealed, balance, spring, outer, inner, drop):
    area = face_area(outer, inner)
    from_spring = 10 * spring / area
    return sealed * (balance - drop) + from_spring, from_spring, area


@relation()
def seal_pressure_velocity(pressure, velocity):
    return pressure * velocity


@relation()
def seal_face_heat(pressure, outer, inner, speed, friction, start_factor):
    drag = 0.1 * friction * pressure * face_area(outer, inner)
    torque = drag * (outer + inner) * (0.25 / 1000)
    return torque * angular(speed) / 1000, torque, torque * start_factor


@relation()
def rotating_ring_film_coefficient(diameter, speed, viscosity, prandtl, conductivity):
    re = angular(speed) * diameter * diameter / (2 * viscosity)
    nu = 0.133 * np.cbrt(re * re) * np.cbrt(prandtl)
    return nu * conductivity / diameter * 1000, re, nu


def fin(film, perimeter, conductivity, area, length):
    m = np.sqrt(film * perimeter / (conductivity * area))
    return conductivity * area * m * np.tanh(m * length)


@relation()
def seal_face_temperature_rise(heat, outer, inner, film, length, conductivity, still_film, still_length, still_conductivity):
    area = face_area(outer, inner) * 1e-6
    perimeter = math.pi / 1000 * outer
    turning = fin(film, perimeter, conductivity, area, length / 1000)
    both = turning + fin(still_film, perimeter, still_conductivity, area, still_length / 1000)
    return heat * 1000 / both, turning / both


@relation()
def seal_heat_soak(coefficient, balance, pump, chamber):
    conductance = coefficient * balance
    return conductance * (pump - chamber) / 1000, conductance


@relation(flush=(1, 3), flush_temperature=(30, 40), stirring=(0.01, 0.1), cooling=(1, 5))
def seal_chamber_temperature(heat, pump, exchange, soak, flush, flush_temperature, density, specific_heat, stirring, cooling, cold):
    carries = density * specific_heat * (1 / 60)
    by_flush = flush * carries
    total = exchange * carries + soak + by_flush + cooling
    return pump + ((heat + stirring) * 1000 + by_flush * (flush_temperature - pump) + cooling * (cold - pump)) / total


@relation()
def seal_vapour_margin(chamber, vapour):
    return chamber - vapour, chamber / vapour


@relation(pump=(79, 81), stirring=(0.01, 0.1), cooling=(0.5, 1), allowed=(82, 84))
def seal_flush_needed(heat, pump, exchange, soak, allowed, flush_temperature, density, specific_heat, stirring, cooling, cold):
    carries = density * specific_heat * (1 / 60)
    left = (heat + stirring) * 1000 + (exchange * carries + soak) * (pump - allowed) + cooling * (cold - allowed)
    flows = left > 0
    return (np.where(flows, left / (carries * (allowed - flush_temperature)), 0), flows.astype(float), np.where(flows, left / 1000, 0))


@relation()
def seal_flush_flow(heat, rise, density, specific_heat):
    return 60000 * heat / (density * specific_heat * rise)


def jet(pressure_drop, density, orifices):
    return np.sqrt(2e5 * pressure_drop / (orifices * density))


@relation()
def seal_flush_orifice_bore(flow, pressure_drop, density, coefficient, orifices, least):
    bore = np.sqrt(flow * (4e6 / 60000 / math.pi) / (coefficient * jet(pressure_drop, density, orifices)))
    return bore, (bore < least).astype(float)


@relation()
def seal_flush_orifice_flow(bore, pressure_drop, density, coefficient, orifices):
    velocity = jet(pressure_drop, density, orifices)
    return math.pi / 4 * 0.06 * coefficient * bore * bore * velocity, velocity


@relation(bush=(41, 42), shaft=(39, 40))
def seal_throat_velocity(flow, bush, shaft):
    return flow * (4e6 / 60000 / math.pi) / (bush * bush - shaft * shaft)


def terminal_reynolds(archimedes):
    x = np.log(archimedes / (18 + 0.6 * np.sqrt(archimedes)))
    for _ in range(6):  # Newton's steps on the logarithm of Re
        re = np.exp(x)
        rest = re**0.6459
        value = 24 * re * (1 + 0.1806 * rest) + 0.4251 * re * re / (1 + 6880.95 / re)
        slope = 24 * re * (1 + 0.1806 * 1.6459 * rest) + 0.4251 * re * re * (2 * re + 3 * 6880.95) * re / (re + 6880.95) ** 2
        x = x - np.log(value / (4 / 3 * archimedes)) * value / slope
    return np.exp(x)


@relation()
def seal_chamber_drift(size, particle, liquid, viscosity, speed, radius, swirl):
    turning = swirl * angular(speed)
    acceleration = turning * turning * radius / 1000
    d, mu = size * 1e-6, viscosity / 1000
    re = terminal_reynolds(acceleration * d * d * d * liquid * np.abs(particle - liquid) / (mu * mu))
    velocity = 1000 * re * mu / (liquid * d)
    out = particle > liquid
    return np.where(out, velocity, -velocity), np.where(velocity > 0, np.where(out, 0.0, 1.0), 2.0), acceleration, re


@relation()
def seal_chamber_clearing(size, particle, liquid, viscosity, speed, at_faces, at_impeller, length, inward, swirl):
    slope = (at_impeller - at_faces) / (2 * length)
    sine = slope / np.sqrt(1 + slope * slope)
    turning = swirl * angular(speed)
    acceleration = turning * turning * (at_faces + at_impeller) / 4000
    d, mu = size * 1e-6, viscosity / 1000
    archimedes = acceleration * d * d * d * liquid * np.abs(particle - liquid) / (mu * mu)
    carries = 1000 * mu / (liquid * d)
    radial = terminal_reynolds(archimedes) * carries
    out = particle > liquid
    along = np.where(out, np.copysign(terminal_reynolds(archimedes * np.abs(sine)) * carries, sine), 0)
    settled = np.where(along > inward, 0.0, np.where(inward > 0, 3.0, np.where(along < 0, 2.0, 1.0)))
    return np.where(radial > 0, np.where(out, settled, 4.0), 5.0), np.where(out, radial, -radial), along, slope


@relation()
def seal_chamber_fraction(rows):  # balance holes
    return np.full(rows, 0.15), np.full(rows, 0.05), np.full(rows, 0.25)


CURVE_T = np.array([80, 90, 100, 110, 120, 130, 140]) + 273.15
CURVE_P = np.array([0.4741472, 0.7018236, 1.01418, 1.43376, 1.986654, 2.702596, 3.61501])
INVERSE, LOG = -1 / CURVE_T, np.log(CURVE_P)


@relation(chamber=(1.5, 3.5), temperature=(82, 110))
def seal_temperature_margin(chamber, temperature, face_rise):
    warmest = temperature + face_rise
    vapour = np.exp(np.interp(-1 / (warmest + 273.15), INVERSE, LOG))
    boiling = -1 / np.interp(np.log(chamber), LOG, INVERSE) - 273.15
    return vapour, chamber - vapour, chamber / vapour, boiling, boiling - warmest


@relation(chamber=(1.5, 3.5), temperature=(82, 110))
def seal_margin_verdict(chamber, temperature, face_rise, least, ratio, below):  # by the pressure
    vapour, margin, over, _, below_boiling = seal_temperature_margin(chamber, temperature, face_rise)
    return np.where(margin > 0, np.where(margin >= least, 0.0, 1.0), 2.0), margin, over, below_boiling
