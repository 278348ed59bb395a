"""Thrust, shaft strength, vibration and balance."""
from . import G, math, np, relation


def angular(speed):
    return speed * (math.pi / 30)


def circle(diameter):
    return math.pi / 4 * diameter * diameter


@relation()
def radial_thrust_coefficient(flow, best, reference, specific_speed, least):
    x = 0.7 + 2.6 * (51.6452379006990730341 * specific_speed - 500) / 3000
    return np.maximum(reference * np.abs(1 - (flow / best) ** x), least)


@relation()
def radial_thrust(density, head, diameter, width, coefficient):
    return coefficient * density * G * head * diameter * width * 1e-6


@relation()
def rim_pressure(head, density, part):
    return part * density * head * (G * 1e-5)


def drop(density, speed, outer, inner, turning):
    """bar between two diameters in mm"""
    w = turning * angular(speed)
    return density * w * w * (outer * outer - inner * inner) * (0.125 * 1e-11)


def ring_force(at_outer, density, speed, outer, inner, turning):
    return (math.pi / 40) * (outer * outer - inner * inner) * (at_outer - 0.5 * drop(density, speed, outer, inner, turning))


def between_vanes(height, space, smooth):
    return smooth + (1 - smooth) * (height / space)


@relation()
def shroud_pressure(rim, density, speed, outer, diameter, turning):
    return rim - drop(density, speed, outer, diameter, turning)


@relation()
def shroud_force(rim, density, speed, outer, inner, turning):
    return ring_force(rim, density, speed, outer, inner, turning)


@relation()
def back_vane_core_rotation(height, space, smooth):
    return between_vanes(height, space, smooth)


@relation(height=(4, 4.8), space=(5, 6))
def back_vane_relief(density, speed, outer, inner, height, space, smooth):
    return (ring_force(0, density, speed, outer, inner, smooth)
            - ring_force(0, density, speed, outer, inner, between_vanes(height, space, smooth)))


@relation()
def balance_hole_pressure(before, ring, clearance, hole, holes, ratio):
    gap = 0.5 * math.pi * ring * clearance
    ends = holes * circle(hole) * ratio
    return before * (gap * gap / (gap * gap + ends * ends))


@relation()
def back_force_with_ring(rim, density, speed, outer, ring, sleeve, inside, turning):
    return ring_force(rim, density, speed, outer, ring, turning) + (circle(ring) - circle(sleeve)) * inside * 0.1


@relation(impeller=(200, 206), outer=(190, 200), height=(4, 4.8), space=(5, 6))
def back_force_with_vanes(rim, density, speed, impeller, outer, inner, sleeve, height, space, smooth):
    between = between_vanes(height, space, smooth)
    at_vanes = rim - drop(density, speed, impeller, outer, smooth)
    at_holes = at_vanes - drop(density, speed, outer, inner, between)
    force = (ring_force(rim, density, speed, impeller, outer, smooth) + ring_force(at_vanes, density, speed, outer, inner, between)
             + ring_force(at_holes, density, speed, inner, sleeve, smooth))
    return force, at_holes - drop(density, speed, inner, sleeve, smooth)


@relation()
def back_vane_gap_change(density, speed, outer, inner, sleeve, height, before, after, smooth):
    first, second = between_vanes(height, before, smooth), between_vanes(height, after, smooth)
    pressure = drop(density, speed, outer, inner, first) - drop(density, speed, outer, inner, second)
    force = ring_force(0, density, speed, outer, inner, second) - ring_force(0, density, speed, outer, inner, first)
    return force + pressure * (circle(inner) - circle(sleeve)) * 0.1, pressure


@relation()
def inlet_momentum_force(density, flow, eye, hub):
    q = flow / 3600
    return density * q * q / (circle(eye) - circle(hub)) * 1e6


@relation()
def shaft_end_force(suction, shaft):
    return circle(shaft) * suction * 0.1


@relation()
def vane_side_force(mean, outer, eye):
    return mean * (circle(outer) - circle(eye)) * 0.1


@relation()
def axial_thrust(back, front, momentum, shaft_end, weight, scatter):
    net = back - front - momentum - shaft_end + weight
    doubt = scatter * (np.abs(back) + np.abs(front))
    least, greatest = net - doubt, net + doubt
    return net, least, greatest, np.where(least > 0, 0.0, np.where(greatest < 0, 1.0, 2.0))


@relation(thrust=(-1000, 1000))
def thrust_row(thrust):  # back to back
    return np.where(thrust == 0, 2.0, np.where(thrust > 0, 1.0, 0.0))


@relation()
def shaft_stiffness_ratio(overhang, diameter):
    square = diameter * diameter
    return overhang * overhang * overhang / (square * square)


@relation(critical=(3000, 4000))
def critical_speed_separation(critical, highest, separation):
    ratio = critical / highest
    return ratio, np.where(ratio >= 1 + separation, 0.0, 1.0)


def torsion(torque, diameter, bore=0):
    d2, b2 = diameter * diameter, bore * bore
    return 16000 / math.pi * torque * diameter / (d2 * d2 - b2 * b2)


@relation(bore=(0, 10))
def shaft_shear_stress(torque, diameter, bore):
    return torsion(torque, diameter, bore)


@relation()
def shaft_combined_stress(moment, torque, axial, diameter):
    normal = 32000 / math.pi * moment / (diameter * diameter * diameter) + np.abs(axial) / circle(diameter)
    shear = torsion(torque, diameter)
    return normal, shear, np.sqrt(0.25 * normal * normal + shear * shear), np.sqrt(normal * normal + 3 * shear * shear)


@relation()
def shaft_endurance_limit(ultimate, surface, size, other):
    return surface * size * other * np.minimum(0.5 * ultimate, 700)


@relation(swing=(0, 10))
def shaft_fatigue_safety(moment, torque, swing, diameter, endurance, ultimate, yielding, bending_notch, torsion_notch):
    section = math.pi / 16000 * diameter * diameter * diameter
    m = 2 * bending_notch * moment
    t, mean = math.sqrt(3) * torsion_notch * swing, math.sqrt(3) * torsion_notch * torque
    whole = np.sqrt(m * m + (mean + t) ** 2)
    return section / (np.sqrt(m * m + t * t) / endurance + mean / ultimate), section * yielding / whole


@relation()
def key_pressure(torque, shaft, length, width, height):
    force = 2000 * torque / shaft
    return force, force / (length * width), force / (length * height)


@relation(service_factor=(1, 2))
def coupling_torque(power, speed, service_factor):
    return service_factor * power * 1000 / angular(speed)


@relation(part=(0.05, 1))
def starting_torque(at_speed, part, breakaway, end):
    return np.maximum(at_speed * part * part, np.where(part < end, breakaway * (1 - part / end), 0))


@relation(power=(50, 400), velocity=(1, 9))
def vibration_zone(power, velocity):  # category I
    large = power > 200
    a, b, c = np.where(large, 3.5, 2.5), np.where(large, 5.0, 4.0), np.where(large, 7.6, 6.6)
    return np.where(velocity <= a, 0.0, np.where(velocity <= b, 1.0, np.where(velocity <= c, 2.0, 3.0))), a, b, c


@relation(power=(50, 400))
def vibration_alarm_trip(power, baseline):
    large = power > 200
    b, alarm, trip = np.where(large, 5.0, 4.0), np.where(large, 6.3, 5.0), np.where(large, 9.5, 8.3)
    return np.minimum(baseline + 0.25 * b, alarm), alarm, trip


@relation()
def vane_passing_frequency(speed, vanes):
    return vanes * speed / 60


@relation()
def permissible_unbalance(grade, mass, speed):
    eccentricity = grade / angular(speed) * 1000
    return mass * eccentricity, eccentricity


@relation()
def balance_grade(unbalance, mass, speed):
    return unbalance / mass * angular(speed) * 0.001


@relation()
def unbalance_force(unbalance, speed):
    w = angular(speed)
    return unbalance * w * w * 1e-6
