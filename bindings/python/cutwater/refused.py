"""The exception of every refusal."""
from .status import Status


class Refused(ValueError):
    """An input that cannot be answered: which one, its value, what is permitted, and why.

    message      the sentence, as str() gives it
    status       a Status
    argument     position of the input to blame, from 0; None for none
    element      position in a series or array, from 0, counted in C order; None for none
    value        the value given, in unit; NaN for none
    low, high    the permitted interval, in unit; infinite where it has no end
    low_open, high_open   True: the end itself is not permitted
    name, unit   of the input
    refused_rows how many rows of an array call were refused; 0 for other calls
    """

    def __init__(self, message, status=Status.INTERNAL, **fields):
        super().__init__(message)
        self.message = message
        self.status = Status(status)
        self.__dict__.update(fields)
