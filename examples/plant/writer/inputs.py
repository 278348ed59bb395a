"""What one pump's calculation is told: the rows of the Data sheet and the input cells of the Service sheet."""
from collections import namedtuple

Input = namedtuple("Input", "key text unit group")

GROUPS = ("Pump", "Duty and liquid", "Suction", "System", "Pump data", "Motor", "Limits applied")


def _group(group, *rows):
    return [Input(key, text, unit, group) for key, text, unit in rows]


INPUTS = (
    _group(
        "Pump", ("tag", "Tag", ""), ("service", "Service", ""), ("liquid", "Liquid", ""), ("pump", "Form of pump", "")
    )
    + _group(
        "Duty and liquid",
        ("flow", "Flow wanted", "m³/h"),
        ("least_flow", "Least flow the process takes", "m³/h"),
        ("temperature", "Temperature at the pump", "°C"),
        ("density_by", "Density from", "choose"),
        ("density", "Density; of the carrier of a slurry", "kg/m³"),
        ("solids_density", "Density of the solids", "kg/m³"),
        ("solids_fraction", "Solids, share by mass", "–"),
        ("solids_size", "Solids, median size", "mm"),
        ("vapour_by", "Vapour pressure from", "choose"),
        ("vapour_pressure", "Vapour pressure", "bar(a)"),
        ("vapour_t1", "  first point: temperature", "°C"),
        ("vapour_p1", "  first point: vapour pressure", "bar(a)"),
        ("vapour_t2", "  second point: temperature", "°C"),
        ("vapour_p2", "  second point: vapour pressure", "bar(a)"),
        ("viscosity_by", "Viscosity from", "choose"),
        ("viscosity", "Kinematic viscosity", "mm²/s"),
        ("viscosity_t1", "  first point: temperature", "°C"),
        ("viscosity_1", "  first point: viscosity", "mm²/s"),
        ("viscosity_t2", "  second point: temperature", "°C"),
        ("viscosity_2", "  second point: viscosity", "mm²/s"),
        ("specific_heat", "Specific heat; water's is found", "kJ/(kg K)"),
    )
    + _group(
        "Suction",
        ("surface_pressure", "Pressure on the surface", "bar(g)"),
        ("liquid_level", "Surface above the NPSH datum", "m"),
        ("suction_bore", "Line bore", "mm"),
        ("suction_length", "Line length", "m"),
        ("suction_k", "Fittings, sum of K", "–"),
        ("roughness", "Roughness of both lines", "mm"),
        ("bell_diameter", "Bell diameter; none: empty", "mm"),
        ("submergence", "Submergence of the bell", "m"),
    )
    + _group(
        "System",
        ("static_head", "Static head", "m"),
        ("discharge_bore", "Line bore", "mm"),
        ("discharge_length", "Line length", "m"),
        ("discharge_k", "Fittings, sum of K", "–"),
        ("equipment_loss", "Equipment and control valve", "m"),
    )
    + _group(
        "Pump data",
        ("speed", "Speed", "1/min"),
        ("eyes", "Impeller eyes", "–"),
        ("stages", "Stages", "–"),
        ("inlet", "Inlet", "choose"),
        ("best_flow", "Best efficiency flow", "m³/h"),
        ("least_allowed", "Maker's least flow", "m³/h"),
        ("greatest_allowed", "Maker's greatest flow", "m³/h"),
        ("correct_for", "Correct the curve for", "choose"),
        ("impeller_diameter", "Impeller diameter; for solids", "mm"),
        ("slurry_by", "Loss by solids after", "choose"),
        ("shutoff_power", "Power at closed valve", "kW"),
        ("shutoff_on", "  found by the maker on", "choose"),
        ("casing_volume", "Liquid in the casing", "L"),
        ("metal_mass", "Metal that is heated with it", "kg"),
    )
    + _group(
        "Motor",
        ("motor_rating", "Motor fitted", "kW"),
        ("motor_rule", "Margin by", "choose"),
        ("motor_series", "Ratings listed", "choose"),
    )
    + _group(
        "Limits applied",
        ("margin_wanted", "NPSH margin, least", "m"),
        ("ratio_wanted", "NPSH margin ratio, least", "–"),
        ("suction_velocity_limit", "Suction velocity, most", "m/s"),
        ("discharge_velocity_limit", "Discharge velocity, most", "m/s"),
        ("suction_speed_limit", "Suction specific speed, most", "–"),
        ("rise_allowed", "Temperature rise, most", "K"),
        ("shutoff_allowed", "Closed-valve pressure rise, most", "bar"),
    )
)
INPUT = {one.key: one for one in INPUTS}
IDENTITY = [one.key for one in INPUTS if one.group == "Pump"]

CHOICES = {
    "density_by": ("value", "water", "slurry"),
    "vapour_by": ("value", "water", "two points"),
    "viscosity_by": ("value", "water", "two points"),
    "inlet": ("end suction", "side suction"),
    "correct_for": ("nothing", "viscosity", "solids"),
    "slurry_by": ("Engin and Gur", "Cave"),
    "shutoff_on": ("water", "the liquid"),
    "motor_rule": ("process", "ISO 13709"),
    "motor_series": ("trade", "primary", "secondary"),
}

# Series: room for ten points; a shorter curve leaves the last cells empty.
POINTS = 10
Series = namedtuple("Series", "key text unit")
SERIES = (
    Series("flows", "Flow", "m³/h"),
    Series("heads", "Head", "m"),
    Series("efficiencies", "Efficiency", "–"),
    Series("npsh3s", "NPSH3", "m"),
)
ORDINATES = ("heads", "efficiencies", "npsh3s")  # each may have its own first and last point
# The same curve on the liquid that is pumped.
USED = (
    Series("used_flows", "Flow", "m³/h"),
    Series("used_heads", "Head", "m"),
    Series("used_efficiencies", "Efficiency", "–"),
    Series("used_npsh3s", "NPSH3", "m"),
    Series("used_powers", "Power input", "kW"),
    Series("used_system", "Head of the system", "m"),
)

# Where an input is not used, by the words of others: a condition with inputs' names in braces.
IDLE = {
    "density": 'AND({density_by}="water";{correct_for}<>"solids")',
    **{key: 'AND({density_by}<>"slurry";{correct_for}<>"solids")' for key in ("solids_density", "solids_fraction")},
    **{key: '{correct_for}<>"solids"' for key in ("solids_size", "impeller_diameter", "slurry_by")},
    "vapour_pressure": '{vapour_by}<>"value"',
    **{key: '{vapour_by}<>"two points"' for key in ("vapour_t1", "vapour_p1", "vapour_t2", "vapour_p2")},
    "viscosity": '{viscosity_by}<>"value"',
    **{key: '{viscosity_by}<>"two points"' for key in ("viscosity_t1", "viscosity_1", "viscosity_t2", "viscosity_2")},
    "specific_heat": '{density_by}="water"',
    "submergence": '{bell_diameter}=""',
}

# A bare number beyond these is another unit's, or a slip: it is asked back. In the limit's own unit, and what may have been meant.
LIMITS = {
    "margin_wanted": (0, 30, ""),
    "ratio_wanted": (1, 10, ""),
    "suction_velocity_limit": (0.1, 5, "ft/s?"),
    "discharge_velocity_limit": (0.1, 10, "ft/s?"),
    "suction_speed_limit": (50, 600, "US units (1/min, US gal/min, ft)?"),
    "rise_allowed": (0.1, 60, ""),
    "shutoff_allowed": (0.1, 1000, ""),
}
