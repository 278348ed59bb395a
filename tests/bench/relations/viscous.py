"""Correction for viscous liquids."""
from . import G, math, np, relation


def parameter(viscosity, flow, head, speed):
    return 16.5 * np.sqrt(viscosity) * head**0.0625 / (flow**0.375 * speed**0.25)


def flow_ratio_of(b):
    return 2.71 ** (-0.165 * np.log10(np.maximum(b, 1)) ** 3.15)  # 1 up to 1


def efficiency_ratio_of(b, efficiency, ratio):
    return np.where(b > 1, b ** (-0.0547 * b**0.69), (1 - (1 - efficiency) * ratio**0.07) / efficiency)


@relation(viscosity=(80, 400), flow=(50, 200), head=(40, 90))
def viscosity_parameter(viscosity, flow, head, speed):
    return parameter(viscosity, flow, head, speed)


@relation(viscosity=(80, 400))
def viscosity_parameter_from_duty(flow, head, viscosity):
    return 2.80 * np.sqrt(viscosity) / (flow**0.25 * head**0.125)


@relation(b=(1.5, 30))
def viscous_flow_ratio(b):
    return flow_ratio_of(b)


@relation(b=(1.5, 30), share=(0.2, 1.2))
def viscous_head_ratio(b, share):
    return 1 - (1 - flow_ratio_of(b)) * share**0.75


@relation(b=(1.5, 30))
def viscous_efficiency_ratio(b, efficiency, viscosity, water):
    return efficiency_ratio_of(b, efficiency, viscosity / water)


def performance(flow, head, efficiency, best_flow, best_head, best_efficiency, speed, viscosity, density, water):
    b = parameter(viscosity, best_flow, best_head, speed)
    ratio = flow_ratio_of(b)
    thick_flow = ratio * flow
    thick_head = (1 - (1 - ratio) * (flow / best_flow) ** 0.75) * head
    thick_efficiency = efficiency_ratio_of(b, best_efficiency, viscosity / water) * efficiency
    return thick_flow, thick_head, thick_efficiency, density * G * (thick_flow / 3600) * thick_head / thick_efficiency / 1000


CURVE = dict(flow=(20, 120), efficiency=(0.3, 0.6), best_efficiency=(0.66, 0.7))


@relation(viscosity=(80, 200), **CURVE)
def viscous_performance(flow, head, efficiency, best_flow, best_head, best_efficiency, speed, viscosity, density, water):
    return performance(flow, head, efficiency, best_flow, best_head, best_efficiency, speed, viscosity, density, water)


@relation(once=("best_flow", "best_head", "best_efficiency", "speed", "viscosity", "density", "water"), flow=(20, 120), efficiency=(0.3, 0.6))
def viscous_performance(flow, head, efficiency, best_flow, best_head, best_efficiency, speed, viscosity, density, water):
    return performance(flow, head, efficiency, best_flow, best_head, best_efficiency, speed, viscosity, density, water)


@relation(viscosity=(80, 400))
def water_equivalent_duty(flow, head, viscosity):
    ratio = flow_ratio_of(2.80 * np.sqrt(viscosity) / (flow**0.25 * head**0.125))
    return flow / ratio, head / ratio
