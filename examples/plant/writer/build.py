"""How each pump is built, for the sheets of the pump itself: what they are told, and the sheet Build, a column a pump."""
from collections import namedtuple

from .odf import Sheet, reference

HOME, FIRST, SPARES, ROOM = "Build", 3, 5, 8

# choices: the words it may be; when: the condition under which it must be given (False: it may be left out)
BuildInput = namedtuple("BuildInput", "key text unit choices when")
BuildSeries = namedtuple("BuildSeries", "key text unit points when")

HOLES, VANES, OPEN, RINGS = (
    '{arrangement}="balance holes"',
    '{arrangement}="back vanes"',
    '{impeller_form}="open"',
    '{impeller_form}="closed"',
)
DOUBLE, FLUSHED, OIL, GREASE = (
    '{seal_form}="double"',
    '{flush_from}<>"none"',
    '{lubricant}="oil"',
    '{lubricant}="grease"',
)


def _one(key, text, unit="–", choices=None, when=None):
    return BuildInput(key, text, unit, choices, when)


GROUPS = {
    "Standard and impeller": (
        _one(
            "pump_standard",
            "Standard that the pump is held to",
            "choose",
            ("ISO 5199", "ISO 9908", "ISO 13709", "ASME B73.1"),
        ),
        _one(
            "casing",
            "Casing around the impeller",
            "choose",
            ("single volute", "double volute", "concentric", "diffuser"),
        ),
        _one("impeller_form", "Impeller: closed with rings, or open", "choose", ("closed", "open")),
        _one("arrangement", "Behind the impeller", "choose", ("balance holes", "back vanes", "no back ring")),
        _one("impeller", "Impeller diameter, as trimmed", "mm"),
        _one("outlet_width", "Outlet width, shrouds included", "mm"),
        _one("eye", "Diameter of the eye", "mm"),
        _one("sleeve", "Diameter at the sleeve or seal", "mm"),
        _one("vanes", "Vanes of the impeller"),
        _one("reference_thrust", "Radial thrust coefficient, by the casing"),
        _one("static_part", "Rim's static pressure, part of the head"),
        _one("core_rotation", "Liquid's turning over the impeller's"),
        _one("front_ring", "Front ring's diameter", "mm", when=RINGS),
        _one("front_length", "Front ring's length", "mm", when=RINGS),
        _one("vane_side_part", "Open: vanes' side pressure, part of head", when=OPEN),
        _one("back_ring", "Back ring's diameter", "mm", when=HOLES),
        _one("holes", "Balance holes", when=HOLES),
        _one("hole", "Diameter of a balance hole", "mm", when=HOLES),
        _one("back_vane_outer", "Back vanes: outer diameter", "mm", when=VANES),
        _one("back_vane_inner", "Back vanes: inner diameter", "mm", when=VANES),
        _one("back_vane_height", "Back vanes: height", "mm", when=VANES),
    ),
    "Clearances": (
        _one("clearance_set", "Clearance set; open axial, ring radial", "mm"),
        _one("clearance_now", "Clearance as measured now", "mm"),
        _one("back_gap_set", "Gap behind the back vanes as set", "mm", when=VANES),
        _one("clearance_limit", "Clearance not to be exceeded", "mm"),
        _one("months", "Time since it was set", "month"),
        _one("vane_width", "Open: width of the vanes at the outlet", "mm", when=OPEN),
        _one("head_slope", "Open: head lost per width of clearance", when=OPEN),
        _one("hydraulic_efficiency", "Open: hydraulic efficiency", when=OPEN),
        _one("edge_diameter", "Open: mean diameter of the vanes' edge", "mm", when=OPEN),
        _one("edge_width", "Open: mean width of the vanes", "mm", when=OPEN),
        _one("edge_length", "Open: length of a vane along the flow", "mm", when=OPEN),
        _one("efficiency_slope", "Open: efficiency lost per width", when=OPEN),
        _one("thread_lead", "Threaded bearing carrier: lead", "mm", when=OPEN),
        _one("divisions", "Threaded bearing carrier: divisions", when=OPEN),
        _one("carrier_length", "Length that grows; closed: ring's diameter", "mm"),
        _one("rotor_expansion", "Expansion of the rotor", "1e-6/K"),
        _one("rotor_temperature", "Mean temperature of the rotor", "°C"),
        _one("casing_expansion", "Expansion of the casing", "1e-6/K"),
        _one("casing_temperature", "Mean temperature of the casing", "°C"),
        _one("least_hot", "Least clearance hot", "mm"),
    ),
    "Readings on site": (
        _one("site_flow", "Flow", "m³/h"),
        _one("site_suction", "Suction gauge", "bar(g)"),
        _one("site_discharge", "Discharge gauge", "bar(g)"),
        _one("gauge_height", "Discharge gauge above the suction gauge", "m"),
        _one("site_suction_bore", "Bore at the suction gauge", "mm"),
        _one("site_discharge_bore", "Bore at the discharge gauge", "mm"),
        _one("site_speed", "Speed", "1/min"),
        _one("site_power", "Power from the mains", "kW"),
        _one("motor_efficiency", "Efficiency of motor and drive"),
        _one("hours", "Hours run in a year", "h"),
        _one("price", "Price of a kilowatt-hour"),
        _one("reset_cost", "Cost of a reset or of new rings"),
    ),
    "Shaft": (
        BuildSeries("lengths", "Length of section {}, from the impeller on", "mm", 5, None),
        BuildSeries("diameters", "Diameter of section {}", "mm", 5, None),
        _one("overhang", "Impeller to the inboard bearing", "mm"),
        _one("seal_distance", "Impeller to the seal faces", "mm"),
        _one("sleeve_shaft", "Shaft's diameter under the sleeve", "mm"),
        _one("bearing_shaft", "Shaft's diameter at the inboard bearing", "mm"),
        _one("coupling_shaft", "Shaft's diameter at the coupling", "mm"),
        _one("elastic", "Modulus of elasticity", "GPa"),
        _one("tensile", "Tensile strength", "MPa"),
        _one("yielding", "Yield strength", "MPa"),
        _one("surface_factor", "Factor of the surface"),
        _one("size_factor", "Factor of the size"),
        _one("other_factors", "Other factors: reliability, temperature"),
        _one("bending_notch", "Notch factor in bending"),
        _one("torsion_notch", "Notch factor in torsion"),
        _one("safety_wanted", "Safety wanted, fatigue and yield"),
        _one("impeller_mass", "Mass of the impeller with its liquid", "kg"),
        _one("rotor_weight", "Weight of the rotor", "N"),
        _one("weight_place", "its place, from the inboard bearing on", "mm"),
        _one("residual", "Residual unbalance of the impeller", "g mm"),
        _one("drive_force", "Belt pull, or force of the coupling", "N"),
        _one("drive_place", "its place, from the inboard bearing on", "mm"),
        _one("service_factor", "Service factor of the coupling"),
        _one("coupling_rated", "Torque that the coupling is rated for", "N m"),
        _one("key_length", "Key: bearing length", "mm"),
        _one("key_width", "Key: width", "mm"),
        _one("key_height", "Key: height that bears", "mm"),
        _one("key_allowed", "Key: pressure allowed", "MPa"),
        _one("breakaway", "Torque that sets the rotor turning", "N m"),
    ),
    "Bearings": (
        _one("radial_rating", "Radial bearing, deep groove: C", "N"),
        _one("radial_static", "Radial bearing: C0", "N"),
        _one("radial_f0", "Radial bearing: f0"),
        _one("thrust_rating", "Thrust bearing, one row or double row: C", "N"),
        _one("thrust_static", "Thrust bearing: C0", "N"),
        _one("thrust_rows", "Thrust bearing: single rows 2, double row 1"),
        _one("contact_angle", "Thrust bearing: contact angle", "deg"),
        _one("mounting", "Thrust bearing's rows", "choose", ("back to back", "face to face")),
        _one("pitch", "Mean of bore and outside diameter", "mm"),
        _one("static_wanted", "Static safety wanted"),
        _one("elements", "Radial bearing: balls"),
        _one("element", "Radial bearing: diameter of a ball", "mm"),
        _one("lubricant", "Lubricated by", "choose", ("oil", "grease")),
        _one("oil_t1", "Oil, or the grease's: first temperature", "°C"),
        _one("oil_1", "its viscosity there", "mm²/s"),
        _one("oil_t2", "second temperature", "°C"),
        _one("oil_2", "its viscosity there", "mm²/s"),
        _one("contamination", "Contamination factor e_C"),
        _one("friction_f0", "Lubrication factor f0, both bearings"),
        _one("friction_f1", "Load factor f1, thrust bearing"),
        _one("housing_area", "Surface of the housing", "m²"),
        _one("housing_transfer", "Heat transfer to the air", "W/(m² K)"),
        _one("other_heat", "Heat along the shaft and of rubbing seals", "W"),
        _one("air", "Air around, the hottest", "°C"),
        _one("housing_allowed", "Temperature of the housing allowed", "°C"),
        _one("bearing_bore", "Bore of the bearings", "mm", when=GREASE),
        _one("bearing_outside", "Outside diameter of the bearings", "mm", when=GREASE),
        _one("bearing_width", "Width of the bearings", "mm", when=GREASE),
        _one("grease_factors", "Grease: factors of dirt, moisture, vibration", when=GREASE),
    ),
    "Shaft seal": (
        _one("seal_form", "Seal", "choose", ("single", "double")),
        _one("face_outer", "Faces: outer diameter", "mm"),
        _one("face_inner", "Faces: inner diameter", "mm"),
        _one("balance", "Balance diameter", "mm"),
        _one("spring", "Force of the spring", "N"),
        _one("friction", "Friction of the pair of faces"),
        _one("pv_allowed", "Product p·v allowed for the pair", "bar m/s"),
        _one("rotating_length", "Rotating ring: wetted length", "mm"),
        _one("rotating_conductivity", "its thermal conductivity", "W/(m K)"),
        _one("stationary_length", "Stationary ring: wetted length", "mm"),
        _one("stationary_conductivity", "its thermal conductivity", "W/(m K)"),
        _one("stationary_film", "Heat transfer at the stationary ring", "W/(m² K)"),
        _one("prandtl", "Prandtl number of the liquid"),
        _one("conductivity", "Thermal conductivity of the liquid", "W/(m K)"),
        _one("exchange", "Exchange with the pump", "L/min"),
        _one("soak", "Heat soak, a mm of balance diameter", "W/(mm K)"),
        _one("flush_from", "Flush from", "choose", ("none", "discharge", "outside")),
        _one("flush_flow", "Flush, flow", "L/min", when=FLUSHED),
        _one("flush_temperature", "Flush, led in or to be: temperature", "°C"),
        _one("flush_pressure", "its pressure at the source", "bar(g)"),
        _one("throat_bore", "Throat bush: bore", "mm"),
        _one("throat_shaft", "Throat bush: sleeve in it", "mm"),
        _one("criterion", "Margin to boiling judged by", "choose", ("pressure", "ratio", "temperature")),
        _one("margin_pressure", "least margin: pressure", "bar"),
        _one("margin_ratio", "least margin: ratio"),
        _one("margin_temperature", "least margin: temperature", "K"),
        _one("barrier_margin", "Barrier liquid over the chamber", "bar", when=DOUBLE),
        _one("barrier_held", "Barrier pressure held", "bar(g)", when=DOUBLE),
        _one("particle", "Particle: size", "µm"),
        _one("particle_density", "its density", "kg/m³"),
        _one("bubble", "Gas bubble: size", "µm"),
        _one("chamber_at_faces", "Chamber's bore beside the faces", "mm"),
        _one("chamber_at_impeller", "Chamber's bore towards the impeller", "mm"),
        _one("chamber_length", "Chamber's length", "mm"),
        _one("inward", "Liquid along the wall towards the faces", "mm/s"),
        BuildSeries("vapour_t", "Vapour pressure curve, temperature {}", "°C", 6, None),
        BuildSeries("vapour_p", "Vapour pressure curve, pressure {}", "bar(a)", 6, None),
    ),
    "Casing, branches and wall": (
        _one("greatest_suction", "Greatest suction pressure", "bar(g)"),
        _one("greatest_density", "Greatest density, start and flush included", "kg/m³"),
        _one("head_tolerance", "Head tolerance"),
        _one("speed_ratio", "Greatest speed over rated"),
        _one("rated_pressure", "Casing's rated pressure at its temperature", "bar(g)"),
        _one(
            "material_group",
            "Flanges: material group",
            "choose",
            ("group 1.1", "group 1.2", "group 2.1", "group 2.2", "group 2.3"),
        ),
        _one("pressure_class", "Flanges: class"),
        _one("test_held", "Test pressure on the nameplate", "bar(g)"),
        _one("nozzle_rule", "Nozzle loads by the rule of", "choose", ("ISO 5199", "ISO 13709")),
        BuildSeries("forces", "Force {} of suction x, y, z, discharge x, y, z", "N", 6, None),
        BuildSeries("allowed_forces", "Allowed force {}", "N", 6, None),
        BuildSeries("moments", "Moment {} in the same order", "N m", 6, None),
        BuildSeries("allowed_moments", "Allowed moment {}", "N m", 6, None),
        _one("bore", "Casing's bore", "mm"),
        _one("stress", "Allowable stress at the temperature", "MPa"),
        _one("quality", "Quality factor of casting or weld"),
        _one("allowance", "Corrosion allowance", "mm"),
        _one("wall_before", "Wall at the earlier reading", "mm"),
        _one("wall_now", "Wall now, thinnest place", "mm"),
        _one("interval", "Time between the readings", "year"),
        _one("life_wanted", "Life wanted", "year"),
        _one("warming", "Shut in: warming", "K"),
        _one("expansion", "Liquid's volume expansion", "1e-6/K"),
        _one("compressibility", "Liquid's compressibility", "1/GPa"),
    ),
    "Surfaces and condition": (
        _one("ignition", "Ignition temperature; none: empty", "°C", when=False),
        _one("hottest_surface", "Hottest surface, in running and in upset", "°C"),
        _one("area", "Outside surface of casing and cover", "m²"),
        _one("coefficient", "Heat given to the air", "W/(m² K)"),
        _one("shut_minutes", "Time at closed valve to be borne", "min"),
        _one("temperature_limit", "Temperature not to be reached", "°C"),
        _one("dry_power", "Dry rubbing: heat", "kW"),
        _one("dry_capacity", "Metal that warms with it", "kJ/K"),
        _one("dry_minutes", "Dry running to be borne", "min"),
        _one("dry_area", "Surface that cools it", "m²"),
        _one("dry_limit", "Temperature the parts bear", "°C"),
        _one("category", "Vibration: category", "choose", ("I", "II")),
        _one("velocity", "Vibration measured, greatest r.m.s.", "mm/s"),
        _one("baseline", "Vibration when in good order", "mm/s"),
    ),
}
ALL = [one for rows in GROUPS.values() for one in rows]
SERIES = [one.key for one in ALL if isinstance(one, BuildSeries)]
CHOICES = {one.key: one.choices for one in ALL if isinstance(one, BuildInput) and one.choices}


class Build:
    """Where each input of each pump stands on the sheet; pumps: plant.json's list `builds`, which may be absent."""

    def __init__(self, plant):
        self.pumps = plant.get("builds", [])
        self.count = max(ROOM, len(self.pumps) + SPARES, plant.get("room", 0))
        self.input, self.series, self.row = {}, {}, {"tag": 2}
        row = 3
        for rows in GROUPS.values():
            row += 1
            for one in rows:
                self.row[one.key] = row
                (self.series if isinstance(one, BuildSeries) else self.input)[one.key] = one
                row += one.points if isinstance(one, BuildSeries) else 1

    def row_range(self, key, point=0):
        row = self.row[key] + point
        return reference(HOME, row, FIRST, row, FIRST + self.count - 1)

    def looked_up(self, key, index, point=0):
        cell = f"INDEX({self.row_range(key, point)};1;{index})"
        return f'=IF({index}="";"";IF({cell}="";"";{cell}))'

    def wanted(self, key):
        """What a missing input is called, and when it is wanted."""
        if key in self.input:
            one = self.input[key]
            return one.text, one.when
        one = self.series[key.rsplit("_", 1)[0]]
        return one.text.format(1), one.when

    def sheet(self):
        sheet = Sheet(HOME, [2.9, 7.2, 1.6] + [1.9] * self.count, "Wide", 0.44)
        sheet.heights[0] = 0.8
        sheet.protected = False
        put = sheet.put
        put(0, 0, "How the pumps are built", "Title", across=8)
        put(
            1,
            0,
            (
                "For the sheets Rotor, Seal, Clearance and Containment: a column a pump, under the tag that it has on"
                " the sheet Data. Numbers in the unit of their row, or texts with a unit of their own."
            ),
            "Plain",
            across=3 + self.count,
        )

        def line(row, key, text, unit, values, style, validation=None):
            put(row, 0, key, "Key")
            put(row, 1, text, "Label")
            put(row, 2, unit, "Unit")
            for index in range(self.count):
                put(row, FIRST + index, values[index] if index < len(values) else None, style, validation=validation)

        line(2, "tag", "Tag", "", [pump["tag"] for pump in self.pumps], "InputSmall", "tags")
        sheet.header_rows = 3
        sheet.print_tags(2, FIRST, self.count)
        for title, rows in GROUPS.items():
            row = self.row[rows[0].key] - 1
            for column in range(FIRST + self.count):
                put(row, column, title if column == 0 else None, "Head")
            for one in rows:
                row = self.row[one.key]
                if isinstance(one, BuildSeries):
                    for point in range(one.points):
                        values = [(pump.get(one.key, ()) + [None] * one.points)[point] for pump in self.pumps]
                        line(
                            row + point, f"{one.key} {point + 1}", one.text.format(point + 1), one.unit, values, "Input"
                        )
                else:
                    line(
                        row,
                        one.key,
                        one.text,
                        one.unit,
                        [pump.get(one.key) for pump in self.pumps],
                        "InputSmall" if one.choices else "Input",
                        f"choice_{one.key}" if one.choices else None,
                    )
        return sheet
