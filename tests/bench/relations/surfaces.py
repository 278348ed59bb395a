"""Surface temperatures, heating without flow, heat loss."""
from . import G, math, np, relation

CLASSES = np.array([450, 300, 200, 135, 100, 85.0])


@relation(surface=(70, 400))
def temperature_class(surface, margin, margin_hot):
    found = np.zeros_like(surface)  # T1; rows hotter than that would be refused
    for i in range(1, 6):
        found = np.where(surface + (margin if i >= 3 else margin_hot) <= CLASSES[i], float(i), found)
    return found, CLASSES[found.astype(int)]


@relation(ignition=(90, 500))
def temperature_class_for_gas(ignition):
    found = np.searchsorted(-CLASSES, -ignition, side="right")
    return found.astype(float), CLASSES[found]


@relation(margin=(0, 10))
def surface_temperature_allowed(ignition, share, margin):
    return share * ignition - margin


@relation()
def surface_temperature_allowed_dust(cloud, layer):
    return np.minimum(2 / 3 * cloud, layer - 75)


@relation()
def pump_heat_capacity(volume, density, specific_heat, metal, metal_specific_heat):
    return volume * density * specific_heat * 0.001 + metal * metal_specific_heat


def warming(power, capacity, start, time, surface, ambient, coefficient):
    gives = surface * coefficient
    settled = ambient + 1000 * power / gives
    constant = capacity / gives * (1000 / 60)
    return settled - (settled - start) * np.exp(-time / constant), settled, constant


@relation()
def dead_headed_temperature(power, capacity, start, time, surface, ambient, coefficient):
    return warming(power, capacity, start, time, surface, ambient, coefficient)


@relation()
def dead_headed_time(power, capacity, start, limit, surface, ambient, coefficient):
    gives = surface * coefficient
    settled = ambient + 1000 * power / gives
    return capacity / gives * (1000 / 60) * np.log((settled - start) / (settled - limit)), settled


@relation()
def dry_running_temperature(power, capacity, start, time, surface, ambient, coefficient):
    return warming(power, capacity, start, time, surface, ambient, coefficient)


@relation(ambient=(-10, 10))
def cooling_time(capacity, start, limit, surface, ambient, coefficient):
    return capacity / (surface * coefficient) * (1000 / 3600) * np.log((start - ambient) / (limit - ambient))


@relation()
def surface_coefficient(surface, ambient, size, emissivity, pressure):  # a horizontal cylinder
    hot, cold, d = surface + 273.15, ambient + 273.15, size / 1000
    film = 0.5 * (hot + cold)
    root = film * np.sqrt(film)
    viscosity = 1.458e-6 * root / (film + 110.4)
    conductivity = 2.64638e-3 * root / (film + 245.4 * 10 ** (-12 / film))
    kinematic = viscosity * 287.05287 * film / (pressure * 1e5)
    prandtl = viscosity * (3.5 * 287.05287) / conductivity
    rayleigh = G / film * np.abs(hot - cold) * (d * d * d) / (kinematic * kinematic) * prandtl
    nusselt = (0.60 + 0.387 * rayleigh ** (1 / 6) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2
    convection = nusselt * conductivity / d
    radiation = emissivity * 5.670374419e-8 * (hot * hot + cold * cold) * (hot + cold)
    return convection + radiation, convection, radiation


@relation()
def casing_heat_loss(surface, ambient, area, coefficient):
    return coefficient * area * (surface - ambient) * 0.001


def through_wall(hot, ambient, area, thickness, conductivity, coefficient):
    flux = (hot - ambient) / (thickness * 0.001 / conductivity + 1 / coefficient)
    return flux * area * 0.001, ambient + flux / coefficient


def along_pipe(hot, ambient, diameter, thickness, conductivity, coefficient):
    surface = diameter + 2 * thickness
    film = 1000 / math.pi / (coefficient * surface)
    loss = (hot - ambient) / (np.log(surface / diameter) / conductivity * (0.5 / math.pi) + film)
    return loss, ambient + loss * film


@relation()
def insulated_casing_heat_loss(hot, ambient, area, thickness, conductivity, coefficient):
    return through_wall(hot, ambient, area, thickness, conductivity, coefficient)


@relation()
def pipe_heat_loss(hot, ambient, diameter, thickness, conductivity, coefficient):
    return along_pipe(hot, ambient, diameter, thickness, conductivity, coefficient)


@relation()
def heat_tracing_duty(hot, ambient, diameter, thickness, conductivity, length, area, coefficient, margin):
    more = 1 + margin
    line = more * along_pipe(hot, ambient, diameter, thickness, conductivity, coefficient)[0] * length * 0.001
    pump = more * through_wall(hot, ambient, area, thickness, conductivity, coefficient)[0]
    return line + pump, line, pump


@relation()
def jacket_heat_duty(loss, capacity, rise, time):
    return loss + capacity * rise / (3600 * time)


@relation()
def jacket_temperature_needed(duty, product, area, overall):
    return product + 1000 * duty / (area * overall)


@relation()
def jacket_steam_flow(duty, latent):
    return duty / latent * 3600
