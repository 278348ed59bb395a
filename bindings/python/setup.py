"""Packs the package that CMake has completed: nothing is compiled or fetched here."""
import os

import numpy
from setuptools import setup
from setuptools.dist import Distribution


class Compiled(Distribution):
    """Tags the wheel with the platform and Python that its library was built for."""

    def has_ext_modules(self):
        return True


setup(
    name="cutwater",
    version=os.environ["CUTWATER_VERSION"],
    description="Checked, unit-safe pump calculations",
    packages=["cutwater"],
    package_data={"cutwater": ["*.so*", "*.pyi", "py.typed"]},
    zip_safe=False,
    python_requires=">=3.10",
    # The compiled part speaks the NumPy interface that it was built with, or a later one before 2.
    install_requires=[f"numpy>={'.'.join(numpy.__version__.split('.')[:2])},<2"],
    distclass=Compiled,
)
