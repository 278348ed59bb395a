"""The package as a user meets it: names, signatures, help, stubs, results' types."""
import ast
import inspect
import pathlib
import pickle
import unittest

import numpy as np

import cutwater

FUNCTIONS = cutwater.catalogue()["functions"]


class Package(unittest.TestCase):
    def test_every_function_is_there(self):
        self.assertEqual(list(cutwater.functions()), [function["name"] for function in FUNCTIONS])
        self.assertEqual(cutwater.version(), cutwater.catalogue()["cutwater"])
        self.assertEqual(cutwater.interface(), cutwater.catalogue()["interface"])
        self.assertEqual(cutwater.__version__, cutwater.version())
        for name in cutwater.__all__:
            self.assertTrue(hasattr(cutwater, name), name)

    def test_names_do_not_meet(self):
        self.assertEqual(len(cutwater.__all__), len(set(cutwater.__all__)))
        inputs = {entry["name"] for function in FUNCTIONS for entry in function["inputs"]}
        for call in (cutwater.rows, cutwater.working, cutwater.solve_for, cutwater.solutions, cutwater.uncertainty, cutwater.sensitivity):
            named = {p.name for p in inspect.signature(call).parameters.values() if p.kind is inspect.Parameter.KEYWORD_ONLY}
            self.assertEqual(named & inputs, set(), call.__name__)

    def test_self_test(self):
        self.assertIsNone(cutwater.self_test())

    def test_functions_are_compiled_ones(self):
        for name in cutwater.functions():
            self.assertTrue(inspect.isbuiltin(getattr(cutwater, name)), name)

    def test_signatures(self):
        for function in FUNCTIONS:
            with self.subTest(function["name"]):
                parameters = inspect.signature(getattr(cutwater, function["name"])).parameters
                self.assertEqual(list(parameters), [entry["name"] for entry in function["inputs"]])
                for entry in function["inputs"]:
                    self.assertIs(parameters[entry["name"]].default, None if "default" in entry else inspect.Parameter.empty)

    def test_help_tells_the_record(self):
        for function in FUNCTIONS:
            with self.subTest(function["name"]):
                text = " ".join(inspect.getdoc(getattr(cutwater, function["name"])).split())
                parts = [function["summary"], function["equation"], function["source"], *(r["sentence"] for r in function["relations"]), *function["cautions"]]
                parts += [entry["meaning"] for entry in function["inputs"] + function["results"]]
                for part in parts:
                    self.assertIn(" ".join(part.split()), text)

    def test_named_tuples(self):
        for function in FUNCTIONS:
            if len(function["results"]) < 2:
                continue
            with self.subTest(function["name"]):
                answer = getattr(cutwater, function["name"])(**function["example"]["inputs"])
                self.assertIsInstance(answer, tuple)
                self.assertEqual(list(answer._fields), [result["name"] for result in function["results"]])
                self.assertIs(getattr(cutwater, type(answer).__name__), type(answer))
                self.assertIs(type(pickle.loads(pickle.dumps(answer))), type(answer))
                self.assertIs(type(answer), type(getattr(cutwater, function["name"])(**function["example"]["inputs"])))

    def test_results_are_of_their_kinds(self):
        types = {"quantity": float, "word": str, "series": np.ndarray}
        for function in FUNCTIONS:
            with self.subTest(function["name"]):
                answer = getattr(cutwater, function["name"])(**function["example"]["inputs"])
                several = answer if len(function["results"]) > 1 else [answer]
                self.assertEqual([type(one) for one in several], [types[result["kind"]] for result in function["results"]])


class Stub(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.tree = ast.parse(pathlib.Path(cutwater.__file__).with_name("__init__.pyi").read_text(encoding="utf-8"))
        cls.definitions = {}
        for node in cls.tree.body:
            if isinstance(node, ast.FunctionDef):
                cls.definitions.setdefault(node.name, []).append(node)

    def test_same_parameters_as_the_functions(self):
        for name in cutwater.functions():
            for node in self.definitions[name]:
                with self.subTest(name):
                    parameters = inspect.signature(getattr(cutwater, name)).parameters
                    self.assertEqual([argument.arg for argument in node.args.args], list(parameters))
                    defaults = [p for p in parameters.values() if p.default is None]
                    self.assertEqual(len(node.args.defaults), len(defaults))

    def test_same_text_as_help(self):
        for name in cutwater.functions():
            with self.subTest(name):
                self.assertEqual(ast.get_docstring(self.definitions[name][0]), inspect.getdoc(getattr(cutwater, name)))

    def test_everything_public_is_declared(self):
        declared = {node.name for node in self.tree.body if isinstance(node, (ast.FunctionDef, ast.ClassDef))}
        # answers.py has its types in it: to a checker it is its own stub, and only `as` makes a name public.
        declared |= {name.asname for node in self.tree.body if isinstance(node, ast.ImportFrom) for name in node.names}
        self.assertEqual(set(cutwater.__all__) - declared, set())
        status = next(node for node in self.tree.body if isinstance(node, ast.ClassDef) and node.name == "Status")
        self.assertEqual({n.targets[0].id: n.value.value for n in status.body}, {s.name: s.value for s in cutwater.Status})

    def test_typed(self):
        self.assertTrue(pathlib.Path(cutwater.__file__).with_name("py.typed").exists())


if __name__ == "__main__":
    unittest.main()
