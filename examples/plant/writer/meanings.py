"""Each check in words for somebody who meets it for the first time: what a finding means, and what is done about it."""

MEANINGS = {
    "tag_once": "Two columns of the sheet Data have this tag, so the sheets cannot know which pump is meant. Give each pump a tag of its own.",
    "unused": "These values were given but another source was chosen, so they have no part in the results. Empty them, or choose the source they belong to.",
    "shape": "The head must fall from point to point. Where it rises with the flow the pump may hunt between two flows, above all with others in parallel; a rise at "
    "the last points is most often a slip in the data.",
    "npsh_margin": "The liquid reaches the impeller too close to boiling. Bubbles form and collapse: head falls, the pump rattles, the impeller wears. Raise the level or "
    "the pressure, cool the liquid, widen the suction line, or take a pump that needs less.",
    "npsh_ratio": "What is offered over what the pump needs is too small, although some metres may be left. NPSH3 is already 3 % of head lost; hot or gassy liquids want more.",
    "pump_head": "At the flow wanted the pump gives less head than the system takes: less will flow. A larger impeller, a higher speed, or less resistance.",
    "motor_needed": "The motor fitted is smaller than the power at the duty with the usual margin asks for. It may trip, or run hot, above all with a cold or heavy liquid.",
    "region": "The pump runs away from its best efficiency flow: more vibration, more load on shaft and seal, a shorter life. Outside of the maker's limits it must not stay.",
    "maker_flow": "The process asks for less flow at times than the maker allows. Below it the flow turns back in the impeller, and it shakes and heats: lead a least flow back.",
    "thermal_flow": "At the least flow the losses heat the liquid more than is allowed. A bypass, a smaller pump, or a stop at low flow.",
    "submergence_needed": "The bell lies too shallow: a vortex may draw air from the surface. More liquid above it, or a larger bell.",
    "shutoff_rise": "Against a closed valve the pump makes more pressure than casing, line or equipment are designed for. Relief, a smaller impeller, or a higher rating.",
    "deposition_suction": "At the least flow the suction line is so slow that solids settle, and the line may block. A smaller bore, or a larger least flow.",
    "deposition_discharge": "At the least flow the discharge line is so slow that solids settle, and the line may block. A smaller bore, or a larger least flow.",
    "greatest_power": "Somewhere on the curve the pump takes more than the motor's rating. If the line breaks or a valve stands wide open the motor is overloaded.",
    "suction_velocity": "The suction line is fast: losses grow with the square, and the flow reaches the impeller uneven. A wider line.",
    "discharge_velocity": "The discharge line is fast: losses, noise, erosion and surge grow. A wider line, or a limit that suits the service.",
    "suction_speed": "A pump with so high a suction specific speed runs steadily in a narrow range only. Keep it near its best flow, or take another.",
    "rise": "The liquid warms by more than is allowed on its way through the pump. More flow, or a more efficient pump.",
}
