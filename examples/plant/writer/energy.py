"""The energy case: one pump over a year's duty profile, throttled, by speed control, and switched on and off."""
from . import chart
from .odf import first_told, reference, refusal
from .upright import Upright

POINTS = 6
WIDTHS = [4.7, 1.7, 1.3, 1.3, 1.3, 1.3, 1.3, 1.3, 3.1]
UNIT, P1, PN, NAME = 1, 2, 2 + POINTS - 1, 8

COSTS = (
    ("purchase", "Purchase: pump, motor, drive"),
    ("installation", "Installation and commissioning"),
    ("operation", "Operation, a year"),
    ("maintenance", "Maintenance, a year"),
    ("downtime", "Loss of production, a year"),
    ("environment", "Environment, a year"),
    ("disposal", "Decommissioning at the end"),
)
MONEY = (
    ("price", "Price of energy", "a kWh"),
    ("emission_factor", "Emission factor of the supply", "kg CO₂/kWh"),
    ("interest", "Interest, a year", "–"),
    ("years", "Years of life", "–"),
    ("inflation", "Rise of prices, a year", "–"),
    ("energy_rise", "Energy price over and above it", "–"),
)

SOURCES = (
    "Duty at each flow: energy balance on the pump's and the system's curves; speed by the similarity parabola, efficiency taken along it. ISO 17769-1 for the quantities.",
    "Cost: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, compounding exactly. Pages in docs/functions tell what was read.",
)
CAUTIONS = (
    "The cube law alone is wrong with static head: the flow then falls faster than the speed, head does not fall with its square, and the law promises a saving that does not come.",
    "Efficiencies of motor and drive are the makers' at that load, and an input: they fall as the load falls. Flow, hours, prices and the emission factor are the engineer's to state.",
    "At low speed mind the motor's cooling, seal, bearings and resonances; near the static head a small change of speed shifts the flow a lot, and below it the pump gives nothing.",
    "On and off needs a tank that takes up the difference; its change of level, losses of starting and the starts an hour that motor and switchgear stand are left out.",
    "One pump alone on the system; its resistance is that of the register, control valve open. Peak demand and reactive power are not in the cost. All sums in one currency.",
)


class Energy(Upright):
    def __init__(self, plant, places):
        self.case = plant["energy"]
        super().__init__("Energy", "Energy and flow control", WIDTHS, "Over its life", plant, places, self.case["tag"])

    def inputs(self, row):
        """Left the pump and its system, right the money; where each stands is returned."""
        put, at = self.sheet.put, {}
        self.head(row, (0, "Pump and system", "Head", 1), (3, "Prices", "Head", 4))
        left = (
            ("static_head", "Static head", "m", None),
            ("resistance", "Resistance, valve open", "h²/m⁵", "Value8"),
            ("speed", "Full speed", "1/min", None),
            ("density_used", "Density", "kg/m³", "Value1"),
            ("duty_flow", "Duty, unthrottled: flow", "m³/h", "Value1"),
            ("power_input", "Duty, unthrottled: shaft power", "kW", "Value1"),
            ("motor_fitted", "Motor's rating", "kW", "Value1"),
        )
        for index, (key, text, unit, style) in enumerate(left, row + 1):
            put(index, 0, text, "Label")
            put(
                index,
                1,
                "=" + (self.looked_up(key) if key != "resistance" else self.square_resistance()),
                style or "TextRight",
            )
            put(index, 2, unit, "Unit")
            at[key] = reference("", index, 1, index, 1) if style is None else reference("", index, 1)
        for index, (key, text, unit) in enumerate(MONEY, row + 1):
            put(index, 3, text, "Label", across=4)
            put(index, 7, self.case[key], "Input")
            put(index, 8, unit, "Unit")
            at[key] = reference("", index, 7, index, 7)
        for index, (key, text) in enumerate(
            (("motor_full", "Motor efficiency at its rating"), ("drive_full", "Drive efficiency at full load")),
            row + 1 + len(left),
        ):
            put(index, 0, text, "Label")
            put(index, 1, self.case[key], "Input")
            put(index, 2, "–", "Unit")
            at[key] = reference("", index, 1, index, 1)
        return at, row + 3 + len(left)

    def year(self, at, flow, hours, control):
        """The call that finds a whole year, the losses at part load by a model."""
        curve = f'{self.looked_up("used_flows")};{self.looked_up("used_heads")};{self.looked_up("used_efficiencies")}'
        return (
            f'CW.DUTY_PROFILE_ENERGY({curve};{at["static_head"]};{at["resistance"]};{flow};{hours};"{control}";{at["motor_fitted"]};{at["motor_full"]};'
            f'{at["density_used"]};{at["drive_full"]})'
        )

    def profile(self, row, at):
        put, rows = self.sheet.put, {}
        curve = f'{self.looked_up("used_flows")};{self.looked_up("used_heads")};{self.looked_up("used_efficiencies")}'
        system = f'{at["static_head"]};{at["resistance"]}'
        # key, text, unit, places, formula or the data's key, functions
        saving = f'CW.SPEED_CONTROL_SAVING({curve};{at["speed"]};{system};{{flow}};{at["density_used"]};{{drive}})'
        loss = f'CW.THROTTLING_POWER_LOSS({curve};{system};{{flow}};{at["density_used"]})'
        along = f'{self.looked_up("used_flows")};{self.looked_up("used_efficiencies")}'
        similar = f'CW.FLOW_AT_SPEED({{flow}};{{speed}};{at["speed"]})'
        full = f'CW.ELECTRICAL_POWER({at["power_input"]};{reference("", row + 18, P1)};{reference("", row + 19, P1)})'
        lines = (
            ("Duty profile",),
            ("flow", "Flow", "m³/h", "flows"),
            ("hours", "Hours a year", "h", "hours"),
            ("system_head", "Head the system takes", "m", 2, f"CW.SYSTEM_HEAD({system};{{flow}})", "system_head"),
            ("Throttled, at full speed",),
            (
                "head",
                "Pump head",
                "m",
                2,
                f'CW.CURVE_HEAD({self.looked_up("used_flows")};{self.looked_up("used_heads")};{{flow}})',
                "curve_head",
            ),
            ("valve_head", "  of which lost in the valve", "m", 2, f"INDEX({loss};1;2)", "throttling_power_loss"),
            ("efficiency", "Pump efficiency", "–", 3, f"CW.CURVE_EFFICIENCY({along};{{flow}})", "curve_efficiency"),
            ("throttled", "Shaft power", "kW", 1, f"INDEX({saving};1;3)", "speed_control_saving"),
            ("loss", "  of which spent in the valve", "kW", 1, f"INDEX({loss};1;1)", "throttling_power_loss"),
            ("motor", "Motor efficiency at that load", "–", "motor_throttled"),
            (
                "overall",
                "Overall efficiency",
                "–",
                3,
                "CW.OVERALL_EFFICIENCY({efficiency};{motor};1)",
                "overall_efficiency",
            ),
            (
                "mains",
                "Power from the mains",
                "kW",
                1,
                "CW.ELECTRICAL_POWER({throttled};{motor};1)",
                "electrical_power",
            ),
            ("Speed control, valve open",),
            ("speed", "Speed", "1/min", 0, f"INDEX({saving};1;2)", "speed_control_saving"),
            (
                "slow_efficiency",
                "Pump efficiency, at the similar flow",
                "–",
                3,
                f"CW.CURVE_EFFICIENCY({along};{similar})",
                "curve_efficiency",
            ),
            (
                "controlled",
                "Shaft power over drive efficiency",
                "kW",
                1,
                f"INDEX({saving};1;4)",
                "speed_control_saving",
            ),
            ("saved", "Saving, before the motor's losses", "kW", 1, f"INDEX({saving};1;1)", "speed_control_saving"),
            ("slow_motor", "Motor efficiency at that load", "–", "motor_speed"),
            ("drive", "Drive efficiency at that load", "–", "drive"),
            (
                "slow_overall",
                "Overall efficiency",
                "–",
                3,
                "CW.OVERALL_EFFICIENCY({slow_efficiency};{slow_motor};{drive})",
                "overall_efficiency",
            ),
            (
                "slow_mains",
                "Power from the mains",
                "kW",
                1,
                "CW.ELECTRICAL_POWER({controlled};{slow_motor};1)",
                "electrical_power",
            ),
            ("On and off at the unthrottled duty, into a tank",),
            (
                "share",
                "Part of the time running",
                "–",
                3,
                f"INDEX({self.year(at, '{flow}', 1, 'on-off')};1;4)",
                "duty_profile_energy",
            ),
            (
                "on_off_mains",
                "Mean power from the mains",
                "kW",
                1,
                f"INDEX({self.year(at, '{flow}', 1, 'on-off')};1;1)",
                "  over one hour",
            ),
            ("For comparison",),
            (
                "cube",
                "Cube law alone: wrong here",
                "kW",
                1,
                f'CW.CUBE_LAW_POWER({full};{at["duty_flow"]};{{flow}};0)',
                "cube_law_power",
            ),
        )
        for index, line in enumerate(lines, row):
            if len(line) > 1:
                rows[line[0]] = index
        for index, line in enumerate(lines, row):
            if len(line) == 1:
                self.head(index, (0, line[0], "Head", 1), *([(NAME, "Function", "Head", 1)] if index == row else []))
                continue
            _, text, unit, *rest = line
            put(index, 0, text, "Label")
            put(index, UNIT, unit, "Unit")
            for point in range(POINTS):
                column = P1 + point
                cell = {key: reference("", r, column, fixed=False) for key, r in rows.items()}
                if len(rest) == 1:
                    given = self.case[rest[0]]
                    put(index, column, given[point] if point < len(given) else None, "Input")
                else:
                    put(index, column, f'=IF({cell["flow"]}="";"";{rest[1].format_map(cell)})', f"Value{rest[0]}")
            put(index, NAME, rest[2] if len(rest) > 1 else "given", "Small")
        row += len(lines)
        refusals = [
            f'IF({reference("", rows["flow"], c)}="";"";'
            + refusal(saving).format(flow=reference("", rows["flow"], c), drive=reference("", rows["drive"], c))
            + '&" ")'
            for c in range(P1, PN + 1)
        ]
        refusals += self.efficiency_refusals(rows)
        put(
            row,
            0,
            f'=IF(ISERROR({self.pump});"There is no pump of this tag on the sheet Data.";IF(TRIM({"&".join(refusals)})="";"Nothing was refused.";"Refused: "&TRIM({"&".join(refusals)})))',
            "NoteBold",
            across=NAME + 1,
        )
        cube = f'CW.REFUSAL("cube_law_power";{at["power_input"]};{at["duty_flow"]};{reference("", rows["flow"], P1 + 1)};{at["static_head"]})'
        self.sheet.heights[row + 1] = 0.98
        put(
            row + 1,
            0,
            f'=IF({cube}="";"No static head: the cube law holds, but for the losses of motor and drive.";"The cube law, asked with the static head, is refused: "&{cube})',
            "Note",
            across=NAME + 1,
        )
        return rows, row + 2

    def efficiency_refusals(self, rows):
        """What the efficiencies of each point are refused for."""
        point = {
            key: [reference("", rows[key], c) for c in range(P1, PN + 1)]
            for key in ("flow", "efficiency", "motor", "slow_efficiency", "slow_motor", "drive")
        }
        calls = [f"CW.OVERALL_EFFICIENCY({point['efficiency'][i]};{point['motor'][i]};1)" for i in range(POINTS)]
        calls += [
            f"CW.OVERALL_EFFICIENCY({point['slow_efficiency'][i]};{point['slow_motor'][i]};{point['drive'][i]})"
            for i in range(POINTS)
        ]
        return [f'IF({flow}="";"";IFERROR({refusal(call)};""))' for flow, call in zip(point["flow"] * 2, calls)]

    def sums(self, row, at, rows):
        """Both ways side by side, each in two columns joined."""
        put, cells = self.sheet.put, {}
        ways = (("throttling", 2, "head", "overall"), ("speed", 4, "system_head", "slow_overall"), ("on-off", 6))
        self.head(
            row,
            (0, '=[.$A$3]&", a year and the pump\'s life"', "Head", 2),
            (2, "Throttled", "HeadRight", 2),
            (4, "By speed", "HeadRight", 2),
            (6, "On and off", "HeadRight", 2),
            (NAME, "Function", "Head", 1),
        )
        series = {
            key: reference("", rows[key], P1, rows[key], PN)
            for key in ("flow", "hours", "head", "system_head", "overall", "slow_overall")
        }
        row += 1

        def line(key, text, unit, style, value, functions):
            nonlocal row
            put(row, 0, text, "Label")
            put(row, 1, unit, "Unit")
            for way, column, *_ in ways:
                put(row, column, value(way, column), style, across=2)
                cells[key, way] = (
                    reference("", row, column, row, column) if style == "Input" else reference("", row, column)
                )  # an empty cost is no cost of 0
            put(row, NAME, functions, "Small")
            row += 1

        def energy(way, column):
            if way == "on-off":
                return f'=INDEX({self.year(at, series["flow"], series["hours"], way)};1;{{}})'
            _, _, head, overall = next(one for one in ways if one[0] == way)
            return f"=INDEX({annual(head, overall)};1;{{}})"

        def annual(head, overall):
            return f'CW.ANNUAL_ENERGY({series["flow"]};{series[head]};{series[overall]};{series["hours"]};{at["density_used"]})'

        line("energy", "Energy", "kWh", "Value0", lambda way, c: energy(way, c).format(1), "annual_energy")
        line(
            "modelled",
            "  losses at part load by a model",
            "kWh",
            "Value0",
            lambda way, c: f'=INDEX({self.year(at, series["flow"], series["hours"], way)};1;1)',
            "duty_profile_energy",
        )
        line(
            "specific",
            "Energy for each volume, mean",
            "kWh/m³",
            "Value4",
            lambda way, c: energy(way, c).format(3),
            "annual_energy",
        )
        line(
            "running",
            "Hours running",
            "h",
            "Value0",
            lambda way, c: f'=INDEX({self.year(at, series["flow"], series["hours"], way)};1;4)',
            "duty_profile_energy",
        )
        line(
            "cost",
            "Cost of the energy",
            "",
            "Value0",
            lambda way, c: f'=CW.ANNUAL_ENERGY_COST({cells["energy", way]};{at["price"]})',
            "annual_energy_cost",
        )
        line(
            "carbon",
            "Carbon dioxide",
            "kg",
            "Value0",
            lambda way, c: f'=CW.CARBON_EMISSION({cells["energy", way]};{at["emission_factor"]})',
            "carbon_emission",
        )
        for key, text in COSTS:
            line(key, text, "", "Input", lambda way, c, key=key: self.case[way][key], "given")

        def life(way, part):
            return f"=INDEX({cost(way)};1;{part})"

        def cost(way):
            c = {key: cells[key, way] for key, _ in COSTS}
            return (
                f'CW.LIFE_CYCLE_COST({c["purchase"]};{c["installation"]};{cells["cost", way]};{c["operation"]};{c["maintenance"]};{c["downtime"]};{c["environment"]};'
                f'{c["disposal"]};{at["interest"]};{at["years"]};{at["inflation"]};{at["energy_rise"]})'
            )

        line("life", "Life-cycle cost, present value", "", "Value0", lambda way, c: life(way, 1), "life_cycle_cost")
        line("of_energy", "  of which energy", "", "Value0", lambda way, c: life(way, 2), "life_cycle_cost")
        one, two, three = (cells["life", way] for way, *_ in ways)
        put(
            5,
            1,
            f'=IF(OR(ISERROR({one});ISERROR({two});ISERROR({three}));"refused: see below";IF({two}<MIN({one};{three});"Speed control costs least";'
            f'IF({one}<={three};"Throttling costs least";"On and off costs least")))',
            "BoxValue",
            across=8,
        )
        asked = self.efficiency_refusals(rows)
        asked += [
            refusal(call)
            for call in (
                annual("head", "overall"),
                annual("system_head", "slow_overall"),
                self.year(at, series["flow"], series["hours"], "on-off"),
                f'CW.ANNUAL_ENERGY_COST({cells["energy", "throttling"]};{at["price"]})',
                f'CW.CARBON_EMISSION({cells["energy", "throttling"]};{at["emission_factor"]})',
                *(cost(way) for way, *_ in ways),
            )
        ]
        self.sheet.heights[row] = 0.8
        put(row, 0, "=" + first_told(asked), "NoteBold", across=NAME + 1)
        return row + 1

    def build(self):
        at, row = self.inputs(7)
        rows, row = self.profile(row, at)
        height = 5.3
        flow = self.area(rows["flow"], P1, None, PN)
        self.sheet.frames.append(
            chart.frame(
                0,
                0,
                self.top(row) + 0.1,
                17.3,
                height,
                "Power from the mains against flow, with the static head",
                "Flow, m³/h",
                "Power, kW",
                [
                    (self.label(rows["head"] - 1, 0), flow, self.area(rows["mains"], P1, None, PN), "system", False),
                    (
                        self.label(rows["speed"] - 1, 0),
                        flow,
                        self.area(rows["slow_mains"], P1, None, PN),
                        "pump",
                        False,
                    ),
                    (
                        self.label(rows["share"] - 1, 0),
                        flow,
                        self.area(rows["on_off_mains"], P1, None, PN),
                        "power",
                        False,
                    ),
                    (self.label(rows["cube"], 0), flow, self.area(rows["cube"], P1, None, PN), "water", False),
                ],
            )
        )
        self.sheet.heights[row] = height + 0.2
        self.sheet.put(row, 0, None)
        self.sheet.breaks.add(row + 1)
        row = self.sums(row + 1, at, rows)
        self.sheet.put(row, 0, None)
        self.foot(row + 1, SOURCES, CAUTIONS)
        return self.sheet
