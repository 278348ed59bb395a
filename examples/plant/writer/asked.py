"""What the formulas of the curve's points and of the results share: the reason behind a refused formula, and conditions."""
import re

from .inputs import INPUT
from .odf import calls_in, refusal

VISCOUS, SOLIDS = '{correction}="viscosity"', '{correction}="solids"'
BEST = "{best_flow};{best_head};{best_efficiency}"
FRICTION = "CW.PIPE_FRICTION_HEAD({{{flow}}};{{{line}_bore}};{{{line}_length}};{{roughness}};{{viscosity_used}})"


def reason(formula):
    """Why one of the formula's calls is refused: of nested calls the innermost, for what stands on a refused call has no reason of its own."""
    told = '""'
    for call in calls_in(formula):
        reason = refusal(call)
        read = re.match(r"CW\.QUANTITY\(\{(\w+)\};", call)  # says what the unit is, not of which input
        if read and read[1] in INPUT:
            reason = f'"{INPUT[read[1]].text.strip()}: "&{reason}'
        told = f"IF(ISERROR({call});{reason};{told})"
    return told
