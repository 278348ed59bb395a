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


