"""The add-in where no compiled one can be built: the same interface, answered in Python over the shared library."""
import unohelper
from com.sun.star.lang import IllegalArgumentException, XServiceInfo
from org.cutwater import XCalc

import cutwater_cells
from cutwater_library import SERIES, Refused, functions, questions

NAME = "org.cutwater.Calc"


class Calc(unohelper.Base, XCalc, XServiceInfo):
    def __init__(self, context):
        pass

    def __getattr__(self, method):
        """Every method of the interface is a function or a question of the library, in capitals."""
        name = method.lower()
        if method != name.upper() or name not in functions and name not in questions:
            raise AttributeError(method)
        if name in questions:
            table = questions[name].several
        else:
            table = len(functions[name].results) > 1 or functions[name].results[0] == SERIES
        answer = cutwater_cells.ask if name in questions else cutwater_cells.call

        def answered(*given):
            try:
                rows = answer(name, given)
            except Refused as refused:
                raise IllegalArgumentException(str(refused), self, refused.argument) from None
            return rows if table else rows[0][0]

        self.__dict__[method] = answered
        return answered

    def getImplementationName(self):
        return NAME + ".portable"

    def supportsService(self, name):
        return name == NAME

    def getSupportedServiceNames(self):
        return (NAME,)


g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Calc, NAME + ".portable", (NAME,))
