"""The real install, as an ordinary user: added, listed, used in a workbook, removed."""
import os
import pathlib
import shutil
import tempfile
import unittest

from sheet import OXT, SOFFICE, Formula, flat, call, run_alone

USER = 1500  # need not exist


class Install(unittest.TestCase):
    def setUp(self):
        # Not below the build folder, which another user may not be able to enter.
        self.home = pathlib.Path(tempfile.mkdtemp(prefix="cutwater-calc-"))
        self.addCleanup(shutil.rmtree, self.home, ignore_errors=True)
        shutil.copy(OXT, self.home)
        book = {"S": [[Formula(call("npsh_available", "1.01325", "0.02339", "998.2", "2", "0.5"))]]}
        (self.home / "book.fods").write_text(flat(book, ""), encoding="utf-8")
        if os.getuid() == 0:  # unopkg refuses root
            for path in (self.home, *self.home.iterdir()):
                os.chown(path, USER, USER)

    def run_as_user(self, program, *arguments):
        profile = f"-env:UserInstallation=file://{self.home}/profile"
        environment = {**os.environ, "HOME": str(self.home)}
        identity = {"user": USER, "group": USER, "extra_groups": []} if os.getuid() == 0 else {}
        code, printed = run_alone([program, *arguments[:1], profile, *arguments[1:]], env=environment, cwd=self.home, **identity)
        self.assertEqual(code, 0, printed)
        return printed

    def value(self):
        self.run_as_user(SOFFICE, "--headless", "--norestore", "--convert-to", "csv", "--outdir", f"{self.home}/out", "book.fods")
        return (self.home / "out" / "book.csv").read_text().strip()

    def test_added_used_removed(self):
        unopkg = os.environ["CUTWATER_UNOPKG"]
        self.run_as_user(unopkg, "add", "--suppress-license", f"{self.home}/{OXT.name}")
        listed = self.run_as_user(unopkg, "list")
        self.assertIn("Identifier: org.cutwater.Calc", listed)
        self.assertIn(f"Version: {os.environ['CUTWATER_VERSION']}", listed)
        self.assertTrue(self.value().startswith("11.61"))
        self.run_as_user(unopkg, "remove", "org.cutwater.Calc")
        self.assertNotIn("org.cutwater.Calc", self.run_as_user(unopkg, "list"))
        self.assertFalse(self.value().startswith("11.61"))


if __name__ == "__main__":
    unittest.main()
