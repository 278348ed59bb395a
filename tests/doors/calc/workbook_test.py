"""Mistakes that a person makes in the workbook, made by a headless office: none may print a wrong sheet."""
import math
import os
import pathlib
import re
import unittest

from driver import Session
from workbook_layout import AT, BANNER, BOOK, FINDINGS, VERDICT, WORST
from writer import field, offers, pump_columns, results
from writer.odf import column_letter

WORK = pathlib.Path(os.environ["CUTWATER_WORK"], "workbook")


def look(session, label):
    for name, cell in (("verdict", VERDICT), ("worst", WORST), ("findings", FINDINGS), ("banner", BANNER)):
        session.get(f"{label}: {name}", "Service", cell)


class ServiceSheet(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        s = Session(BOOK, WORK / "service")
        # One verdict, one place.
        for tag in AT.tags:
            s.set("Service", "A3", tag)
            look(s, tag)
            for key in ("verdict", "check", "findings"):
                s.get(f"{tag}: register {key}", "Checks", AT.checks(AT.places.worst[key], tag))
        # A value tried for one pump.
        s.set("Service", "A3", "PU-02")
        s.set("Service", AT.tried("liquid_level"), -4.2)
        look(s, "typed, for nobody")
        s.set("Service", "J5", "PU-02 ")
        look(s, "tried")
        s.get("tried: used", "Service", AT.used("liquid_level"))
        s.set("Service", "A3", "PU-03")
        look(s, "another tag")
        s.get("another tag: used", "Service", AT.used("liquid_level"))
        s.set("Service", "A3", "PU-02")
        s.macro("Asking.BackToData")
        look(s, "back")
        s.get("back: typed", "Service", AT.tried("liquid_level"))
        # Consequences that are refused, on Service and in the register.
        s.set("Service", "J5", "PU-02")
        s.set("Service", AT.tried("casing_volume"), "empty")
        look(s, "no casing")
        s.macro("Asking.BackToData")
        s.set("Service", "J5", "PU-02")
        s.set("Service", AT.tried("rise_allowed"), "8 degC")
        look(s, "a rise that cannot be read")
        s.get("rise: limit", "Service", AT.result("rise", "D"))
        s.macro("Asking.BackToData")
        # A point of the curve.
        s.set("Service", "J5", "PU-02")
        for point, head in enumerate((33.5, 33.2, 32.3, 31.0, 29.2, 27.0, 24.8, "22.4 kg"), 1):
            s.set("Service", AT.tried_point("heads", point), head)
        look(s, "bad point")
        s.get("bad point: first", "Service", f"A{AT.service.last + 3}")
        s.get("bad point: second", "Service", f"A{AT.service.last + 4}")
        s.ask("why: duty", "Asking.WhyRefused", "Service", AT.result("duty_flow"))
        s.ask("why: water", "Asking.WhyRefused", "Service", AT.result("best_head"))
        s.ask("why: answered", "Asking.WhyRefused", "Service", AT.result("wanted"))
        s.ask("comments", "Asking.Explain", "Service", "A1")
        s.macro("Asking.BackToData")
        # The curve's limit case: the closed-valve pressure goes by the greatest head.
        s.set("Service", "J5", "PU-10")
        s.set("Service", "A3", "PU-10")
        for point, head in enumerate((22.0, 26.0, 25.3, 24.2, 22.9, 21.0, 19.0, 17.5), 1):
            s.set("Service", AT.tried_point("heads", point), head)
        look(s, "drooping")
        s.get("drooping: greatest", "Service", AT.result("greatest_head"))
        s.get("drooping: rise", "Service", AT.result("shutoff_rise"))
        s.get("drooping: density", "Service", AT.result("density_used"))
        s.macro("Asking.BackToData")
        # A limit in US units; a temperature that nothing follows.
        s.set("Service", "J5", "PU-10")
        s.set("Service", AT.tried("suction_speed_limit"), 11000)
        look(s, "US limit")
        s.get("US limit: said", "Service", AT.result("suction_speed", "O"))
        s.macro("Asking.BackToData")
        s.set("Service", "A3", "PU-02")
        s.set("Service", "J5", "PU-02")
        s.set("Service", AT.tried("temperature"), 20)
        look(s, "temperature alone")
        s.macro("Asking.BackToData")
        # Idle values, given all the same.
        s.set("Service", "A3", "PU-12")
        s.set("Service", "J5", "PU-12")
        s.set("Service", AT.tried("density"), 870)
        look(s, "idle")
        s.macro("Asking.BackToData")
        # Results in US units.
        s.set("Service", "A3", "PU-11")
        s.set("Service", "I10", "US units")
        s.get("US: flow", "Service", AT.result("wanted", "G"))
        s.get("US: unit", "Service", AT.result("wanted", "H"))
        s.get("US: suction", "Service", AT.result("suction_speed", "G"))
        s.get("SI: suction", "Service", AT.result("suction_speed"))
        s.set("Service", "I10", "SI units")
        s.get("SI: flow", "Service", AT.result("wanted", "G"))
        # Only the cautions that apply.
        for tag in ("PU-01", "PU-05", "PU-06", "PU-12"):
            s.set("Service", "A3", tag)
            s.get(f"{tag}: cautions", "Service", f"A{cls.caution_row()}")
            s.get(f"{tag}: law", "Service", AT.result("line_law"))
            for key in ("duty_flow", "duty_head", "viscosity_used", "shutoff_used", "density_used"):
                s.get(f"{tag}: {key}", "Service", AT.result(key))
        s.set("Service", "A3", "PU-01")
        s.set("Service", "J5", "PU-01")
        s.set("Service", AT.tried("shutoff_on"), "water")
        s.get("on water", "Service", AT.result("shutoff_used"))
        s.macro("Asking.BackToData")
        # A motor rated in horsepower is no listed rating; whether it leaves the margin is what counts. 5.49 kW x 1.2 = 6.59 kW.
        s.set("Service", "A3", "PU-02")
        s.set("Service", "J5", "PU-02")
        for rating in ("9 hp", "8.5 hp", "7.5"):
            s.set("Service", AT.tried("motor_rating"), rating)
            for name, column in (("needed", None), ("word", "F")):
                s.get(f"motor of {rating}: {name}", "Service", AT.result("motor_needed", column))
        s.macro("Asking.BackToData")
        s.ask("Basic", "Asking.Example", "Service", "A1")
        s.get("works", "Service", "F1")
        s.set("Data", f"D{pump_columns.WORKS_ROW['works'] + 1}", "Acme Chemicals with a very long name")
        for sheet, cell in (("Service", "F1"), ("Register", "I1"), ("Energy", "E1"), ("Rotor", "E1"), ("Field", "D1")):
            s.get(f"works on {sheet}", sheet, cell)
        # A formula typed over, which the sheet's lock forbids.
        s.set("Service", "A3", "PU-99")
        s.set("Service", "J5", "PU-99")
        look(s, "no such pump")
        s.set("Service", "A3", "PU-10")
        s.set("Service", AT.used("liquid_level"), 9)
        look(s, "overwritten")
        cls.found = s.run()

    @staticmethod
    def caution_row():
        cells = AT.service.sheet.cells
        return next(row for (row, column), (content, *_) in cells.items() if column == 0 and content == "Cautions") + 2

    def text(self, label):
        return self.found[label].text

    def test_service_and_register_say_the_same(self):
        for tag in AT.tags:
            self.assertEqual(self.text(f"{tag}: verdict"), self.text(f"{tag}: register verdict"), tag)
            self.assertEqual(self.text(f"{tag}: worst"), self.text(f"{tag}: register check"), tag)
            self.assertEqual(self.text(f"{tag}: findings"), self.text(f"{tag}: register findings") or "nothing", tag)
        self.assertIn("Maker's least flow", self.text("PU-09: findings"))
        self.assertIn("Operating region", self.text("PU-09: findings"))

    def test_values_tried_belong_to_one_pump(self):
        self.assertEqual(self.text("PU-02: banner"), "")
        self.assertEqual(self.text("typed, for nobody: verdict"), "meets")
        self.assertIn("1 value is typed to be tried and not used", self.text("typed, for nobody: banner"))
        self.assertEqual((self.text("tried: verdict"), self.text("tried: used")), ("FAILS", "-4.2"))
        self.assertIn("1 input differs from Data: Surface above the NPSH datum", self.text("tried: banner"))
        self.assertEqual(
            (self.text("another tag: verdict"), self.text("another tag: worst")), (self.text("PU-03: verdict"), self.text("PU-03: worst"))
        )
        self.assertEqual(self.text("another tag: used"), "2.9")
        self.assertIn("not used: for PU-02", self.text("another tag: banner"))
        self.assertEqual((self.text("back: verdict"), self.text("back: banner"), self.text("back: typed")), ("meets", "", ""))

    def test_unknown_tag_is_refused(self):
        self.assertEqual((self.text("no such pump: verdict"), self.text("no such pump: worst")), ("refused", "no pump of this tag"))
        self.assertEqual([self.found[f"no such pump: {name}"].error for name in ("verdict", "worst", "findings", "banner")], [0] * 4)

    def test_overwritten_formula_shows(self):
        self.assertEqual(self.text("overwritten: verdict"), "refused")
        self.assertIn("overwritten", self.text("overwritten: banner"))

    def test_refused_consequence_is_no_verdict(self):
        self.assertEqual((self.text("no casing: verdict"), self.text("no casing: worst")), ("refused", "Heating at closed valve"))
        self.assertEqual(self.text("a rise that cannot be read: verdict"), "refused")
        self.assertEqual(self.text("rise: limit"), "refused")

    def test_refusal_names_point_cell_and_cause(self):
        self.assertEqual(self.text("bad point: verdict"), "refused")
        told = self.text("bad point: first") + self.text("bad point: second")
        self.assertIn("22.4 kg", told)
        self.assertIn("point 8", told)
        self.assertRegex(told, r"cell [A-Z]+\d+: ")
        self.assertIn("22.4 kg", self.text("why: water"))
        self.assertIn("22.4 kg", self.text("why: duty"))
        self.assertEqual(self.text("why: answered"), "")
        self.assertGreater(int(self.text("comments")), 20)  # one beside each refused cell of the sheet

    def test_drooping_curve_is_seen(self):
        self.assertNotEqual(self.text("drooping: verdict"), "meets")
        self.assertIn("Shape of the head curve", self.text("drooping: findings"))
        self.assertEqual(float(self.text("drooping: greatest")), 26)
        by_hand = 26 * 9.80665 * float(self.text("drooping: density")) / 1e5
        self.assertAlmostEqual(float(self.text("drooping: rise")), by_hand, 2)

    def test_limit_in_us_units_is_asked_back(self):
        self.assertEqual((self.text("US limit: verdict"), self.text("US limit: worst")), ("refused", "Suction specific speed, per eye"))
        self.assertRegex(self.text("US limit: said"), r"11000 is beyond .* 50 to 600.* it would be 213")

    def test_temperature_tried_alone_is_told(self):
        self.assertIn("still those of the temperature on Data", self.text("temperature alone: banner"))

    def test_motor_in_horsepower_is_judged_by_its_margin(self):
        found = [(self.text(f"motor of {rating}: needed"), self.text(f"motor of {rating}: word")) for rating in ("9 hp", "8.5 hp", "7.5")]
        self.assertEqual(found, [("6.7", "meets"), ("7.5", "FAILS"), ("7.5", "meets")])  # 6.711, 6.338 and 7.5 kW

    def test_idle_value_is_told(self):
        self.assertEqual((self.text("idle: verdict"), self.text("idle: worst")), ("WATCH", "Values given and not used"))

    def test_results_in_us_units(self):
        self.assertEqual((self.text("US: flow"), self.text("US: unit"), self.text("SI: flow")), ("440.0", "US gpm", ""))
        # N_s in 1/min, US gal/min, ft: from (m3/s, m) by (15850.32)^(1/2)/(3.28084)^(3/4)
        factor = math.sqrt(1 / 231e-0 / 0.0254**3 * 60) / (1 / 0.3048) ** 0.75
        self.assertAlmostEqual(float(self.text("US: suction")) / float(self.text("SI: suction")), factor, delta=0.01 * factor)

    def test_cautions_are_this_pumps(self):
        said = {tag: self.text(f"{tag}: cautions") for tag in ("PU-01", "PU-05", "PU-06", "PU-12")}
        self.assertIn("viscous correction", said["PU-01"])
        self.assertIn("settling grains", said["PU-06"])
        self.assertIn("slow, viscous flow", said["PU-05"])
        self.assertEqual((self.text("PU-05: law"), self.text("PU-12: law")), ("points", "square"))
        for word in ("viscous correction", "settling grains", "slow, viscous flow"):
            self.assertNotIn(word, said["PU-12"])

    def test_laminar_lines_by_hand(self):
        """64/Re in both lines (Hagen and Poiseuille); fittings and equipment go with the square of the flow."""
        pump = next(one for one in AT.plant["pumps"] if one["tag"] == "PU-05")
        flow, head, viscosity = (float(self.text(f"PU-05: {key}")) for key in ("duty_flow", "duty_head", "viscosity_used"))

        def loss(line, at):
            bore, speed = pump[f"{line}_bore"] / 1000, at / 3600 / (math.pi / 4 * (pump[f"{line}_bore"] / 1000) ** 2)
            reynolds = speed * bore / (viscosity / 1e6)
            self.assertLess(reynolds, 2000)
            return 64 / reynolds * pump[f"{line}_length"] / bore * speed**2 / (2 * 9.80665), pump[f"{line}_k"] * speed**2 / (
                2 * 9.80665
            )

        pipes = [loss(line, flow) for line in ("suction", "discharge")]
        by_hand = pump["static_head"] + sum(sum(pair) for pair in pipes) + pump["equipment_loss"] * (flow / pump["flow"]) ** 2
        self.assertAlmostEqual(head, by_hand, delta=0.02)

    def test_power_at_closed_valve_goes_with_the_density(self):
        liquid, density = float(self.text("PU-01: shutoff_used")), float(self.text("PU-01: density_used"))
        self.assertAlmostEqual(float(self.text("on water")), liquid * density / 998.2, 2)

    def test_basic_has_a_plain_way_to_the_sentence(self):
        answered, asked, caught = self.text("Basic").split("; ", 2)[0], *re.findall(
            r"(?:asked|caught): (.*?)(?=; caught|$)", self.text("Basic")
        )
        self.assertAlmostEqual(float(answered.removeprefix("answered ")), (1.013 - 0.0234) * 1e5 / (998.2 * 9.80665) + 1.5, 6)
        self.assertEqual(asked.rstrip("."), caught.rstrip("."))
        self.assertTrue(asked.startswith("npsh_available: surface_pressure_bara"), asked)

    def test_works_stand_in_one_cell(self):
        self.assertIn("Ottermoor", self.text("works"))
        for sheet in ("Service", "Register", "Energy", "Rotor", "Field"):
            self.assertIn("Acme Chemicals", self.text(f"works on {sheet}"), sheet)
        self.assertNotIn(
            "Ottermoor", re.search(r"<office:master-styles>.*?</office:master-styles>", BOOK.read_text(encoding="utf-8"), re.S)[0]
        )


class OtherSheets(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        s = Session(BOOK, WORK / "others")
        register = {"No.": "A", "tag": "C", "verdict": "T"}
        last = 3 + len(AT.tags)
        s.get("energy", "Energy", "B6")
        s.set("Energy", "A3", "PU-03")
        s.get("energy of another", "Energy", "B6")
        s.get("energy: banner", "Energy", "C7")
        s.set("Parallel", "A3", "PU-05")
        s.set("Parallel", "I5", "PU-05")
        s.get("parallel: laminar", "Parallel", "B10")
        # The cases of one pump.
        for case in range(5):
            s.get(f"case {case}", "Cases", f"{column_letter(3 + 2 * case)}21")
        for name, key in (("NPSH margin", "npsh_margin"), ("motor", "motor_needed")):
            s.get(f"worst case: {name}", "Cases", f"C{22 + results.WEIGHT.index(key)}")
        s.clear("Cases", "F13")  # the cold start without its density: PU-11's is given by a value
        s.get("case without density", "Cases", "F21")
        s.set("Cases", "D4", "PU-03")
        s.get("cases of another", "Cases", "D21")
        s.get("cases: banner", "Cases", "J4")
        # Readings.
        for case, column in enumerate("CE"):
            s.get(f"field {case}", "Field", f"{column}6")
            for key in ("head_word", "efficiency_word", "power_word", "total_head", "head_lost", "head_sure", "cost", "npsh"):
                s.get(f"field {case} {key}", "Field", f"{column}{cls.field_row(key)}")
        s.get("signs 0", "Field", f"C{cls.field_row('code')}")
        s.clear("Field", f"C{cls.field_row('flow')}")
        s.get("no flow", "Field", f"C{cls.field_row('head_word')}")
        s.get("no flow: power", "Field", f"C{cls.field_row('power_word')}")
        s.set("Field", "E4", "PU-02")
        s.get("readings of another", "Field", "E6")
        # Offers.
        for offer, column in enumerate("CEG"):
            s.get(f"offer {offer}", "Offers", f"{column}6")
        at = offers.Offers(AT.plant, AT.places)
        at.build()
        s.get("offer: greatest power", "Offers", f"C{at.row['greatest_power'] + 1}")
        s.set("Offers", f"C{at.row['efficiencies'] + 7}", 0.99)  # less power at the last point than at the one before
        s.get("offer: greatest power, inside", "Offers", f"C{at.row['greatest_power'] + 1}")
        s.set("Offers", "C4", "PU-03")
        s.get("offers for another", "Offers", "C6")
        # The first pump's column is emptied.
        s.clear("Data", f"D{AT.places.input['tag'] + 1}:D{AT.places.series['npsh3s'] + 10}")
        for name, column in register.items():
            for row in (4, last, last + 1):
                s.get(f"emptied {name} {row}", "Register", f"{column}{row}")
        # A column without a tag, a tag with a blank behind it, one that is double.
        s.clear("Data", AT.data("tag", "PU-02"))
        s.get("no tag", "Data", f"{AT.column('PU-02')}{3 + len(pump_columns.WORKS_ROWS)}")
        s.set("Data", AT.data("tag", "PU-04"), "PU-44  ")
        s.set("Service", "A3", "PU-44")
        s.get("blank behind", "Service", "A5")
        s.set("Data", AT.data("tag", "PU-05"), "PU-06 ")
        s.get("double", "Checks", AT.checks(AT.places.worst["verdict"], "PU-06"))
        cls.found = s.run()

    @staticmethod
    def field_row(key):
        made = field.Field(AT.plant, AT.places)
        made.build()
        return made.row[key] + 1

    def text(self, label):
        return self.found[label].text

    def test_typed_values_hold_for_one_pump(self):
        self.assertEqual(self.text("energy"), "Speed control costs least")
        self.assertEqual(self.text("energy of another"), "refused")
        self.assertIn("is for PU-08, not for PU-03", self.text("energy: banner"))
        self.assertEqual((self.text("cases of another"), self.text("offers for another")), ("refused", "refused"))
        self.assertIn("nothing here holds for PU-03", self.text("cases: banner"))
        self.assertIn("readings are of another pump", self.text("readings of another"))

    def test_square_law_is_not_used_where_it_fails(self):
        self.assertNotEqual(self.found["parallel: laminar"].error, 0)

    def test_cases(self):
        self.assertEqual([self.text(f"case {case}") for case in range(5)], ["WATCH", "WATCH", "WATCH", "WATCH", "FAILS"])
        self.assertEqual(self.text("case without density"), "refused")
        self.assertEqual((self.text("worst case: NPSH margin"), self.text("worst case: motor")), ("Lowest level, hot", "End of curve"))

    def test_field_check(self):
        self.assertEqual(
            [self.text(f"field 0 {key}") for key in ("head_word", "efficiency_word", "power_word")],
            ["below the curve", "below the curve", "within uncertainty"],
        )
        self.assertEqual([self.text(f"field 1 {key}") for key in ("head_word", "efficiency_word", "power_word")], ["below the curve"] * 3)
        # By hand, PU-08: (3.26 - 0.11) bar over rho g, 0.6 m between the gauges, v2^2 - v1^2 with 1480 m3/h in 450 and 500 mm
        flow, density = 1480 / 3600, 996.2
        velocities = [flow / (math.pi / 4 * bore**2) for bore in (0.45, 0.5)]
        head = 3.15e5 / (density * 9.80665) + 0.6 + (velocities[0] ** 2 - velocities[1] ** 2) / (2 * 9.80665)
        self.assertAlmostEqual(float(self.text("field 0 total_head")), head, 2)
        # uncertainty, GUM: 2 % of the head, 3 % of the curve, 3 % of the flow with the curve's slope, of about 0.013 m per m3/h there
        lost, sure = (float(self.text(f"field 0 {key}")) for key in ("head_lost", "head_sure"))
        self.assertAlmostEqual(lost, 1 - head * (1486 / 1487) ** 2 / 36.0, delta=0.002)
        self.assertAlmostEqual(sure, math.hypot(0.02 * (1 - lost), 0.03, 0.03 * 1480 * 0.0133 / 36.0), delta=0.002)
        self.assertEqual(self.text("signs 0"), "BWB")
        self.assertGreater(float(self.text("field 0 cost")), 10000)
        self.assertEqual(self.text("no flow"), "no flow")
        self.assertIn(self.text("no flow: power"), ("below the curve", "within uncertainty", "above the curve"))

    def test_offers(self):
        self.assertEqual([self.text(f"offer {offer}") for offer in range(3)], ["meets", "FAILS", "WATCH"])
        for label, flow, head, efficiency in (("", 145, 37.6, 0.7), (", inside", 125, 43, 0.755)):  # by hand: rho g Q H/eta
            by_hand = 787 * 9.80665 * flow / 3600 * head / efficiency / 1000
            self.assertAlmostEqual(float(self.text(f"offer: greatest power{label}")), by_hand, delta=0.006)

    def test_emptied_column_vanishes(self):
        self.assertEqual(self.text("emptied No. 4"), "1")
        self.assertEqual(self.text("emptied tag 4"), "PU-03")
        last = 3 + len(AT.tags)
        self.assertEqual(self.text(f"emptied verdict {last - 0}"), "")
        for name in ("No.", "tag", "verdict"):
            self.assertEqual(self.text(f"emptied {name} {last}"), "", "one pump less")
            self.assertEqual(self.found[f"emptied {name} {last}"].error, 0)

    def test_tags(self):
        self.assertEqual(self.text("no tag"), "no tag")
        self.assertEqual(self.text("blank behind"), "Condensate return")
        self.assertEqual(self.text("double"), "FAILS")


if __name__ == "__main__":
    unittest.main()
