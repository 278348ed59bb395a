"""What a type checker says of calls with each library's objects. Debian's pandas tells a checker no types, so a few lines here stand for it;
xarray, Dask and Pint bring theirs."""
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

import cutwater

HEAD = """
from typing import Any
import dask.array, dask.dataframe, numpy as np, pandas as pd, pint, xarray as xr
from numpy.typing import NDArray
import cutwater
npsh = cutwater.npsh_available
trim = cutwater.point_at_small_trim
array: NDArray[np.float64]
labelled: xr.DataArray
lazy: dask.array.Array
column: dask.dataframe.Series
metres: pint.Quantity[float]
series: pd.Series[float]
frame: pd.DataFrame
"""
NUMBERS = r"numpy.ndarray\[Any, numpy.dtype\[numpy.floating\[numpy._typing._64Bit\]\]\]"
SAID = {
    "npsh(1, 0.02, 998, 2.0, '6 ft')": "builtins.float",
    "npsh(1, 0.02, 998, array, 0.5)": NUMBERS,
    "npsh(1, 0.02, 998, [1.0, 2.0], 0.5)": NUMBERS,
    "npsh(1, 0.02, 998, labelled, array)": "xarray.core.dataarray.DataArray",
    "npsh(1, 0.02, labelled, labelled, 0.5)": "xarray.core.dataarray.DataArray",
    "npsh(1, 0.02, 998, lazy, array)": "dask.array.core.Array",
    "npsh(1, 0.02, column, column, 0.5)": "dask.dataframe.core.Series",
    "npsh(1, 0.02, 998, metres, array)": "Any",
    "npsh(1, 0.02, 998, series, array)": r"pandas.Series\[Any\]",
    "npsh(1, 0.02, frame, frame, 0.5)": "pandas.DataFrame",
    "cutwater.curve_head(series, labelled, 75)": "builtins.float",
    "cutwater.curve_head([0, 50], [40, 38], labelled)": "xarray.core.dataarray.DataArray",
    "trim(array, 50, 260, 250, 100).trimmed_head_m": NUMBERS,
    "trim(labelled, 50, 260, 250, 100).trimmed_head_m": "xarray.core.dataarray.DataArray",
    "cutwater.rows(npsh, 1, 0.02, 998, array, 0.5).refused": r"numpy.ndarray\[Any, numpy.dtype\[numpy.bool_\]\]",
    "cutwater.rows(npsh, 1, 0.02, 998, labelled, 0.5).refused": "xarray.core.dataarray.DataArray",
}
WRONG = "npsh(1, 0.02, 998, {'a': 1}, 0.5)"
PANDAS = "from typing import Generic, TypeVar\nT = TypeVar('T')\nclass Series(Generic[T]): ...\nclass DataFrame: ...\n"


class Stub(unittest.TestCase):
    def test_types(self):
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            (folder / "pandas.pyi").write_text(PANDAS, encoding="utf-8")
            (folder / "mypy.ini").write_text("[mypy]\n[mypy-dask.*,xarray.*,pint.*,cutwater.*]\nfollow_imports = silent\n", encoding="utf-8")
            (folder / "calls.py").write_text(HEAD + "".join(f"reveal_type({call})\n" for call in SAID) + WRONG + "\n", encoding="utf-8")
            done = subprocess.run([sys.executable, "-m", "mypy", "--config-file", "mypy.ini", "--ignore-missing-imports", "--cache-dir", "cache", "calls.py"],
                                  cwd=folder, capture_output=True, encoding="utf-8", timeout=600,
                                  env={**os.environ, "MYPYPATH": f"{folder}:{pathlib.Path(cutwater.__file__).parents[1]}"})
        revealed = re.findall(r'note: Revealed type is "(.*)"', done.stdout)
        self.assertEqual(len(revealed), len(SAID), done.stdout + done.stderr)
        for (call, wanted), got in zip(SAID.items(), revealed):
            self.assertRegex(got, f"^({wanted})$", call)
        self.assertEqual(re.findall(r"calls.py:\d+: error: .*\[(.*)\]", done.stdout), ["call-overload"], done.stdout)


if __name__ == "__main__":
    unittest.main()
