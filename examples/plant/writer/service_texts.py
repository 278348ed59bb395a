"""What the sheet Service says in words. A source or a caution: (condition with names of the sheet, or none, text)."""

HOW_TO = (
    "Choose a tag in its cell above (a list drops down): every value is looked up on the sheet Data. To try another value type it beside the value, in the cream cell, and choose in "
    "“Values tried are for” whose it is: it counts for that pump only, the heading of every page tells how many differ, and “Back to Data”, or emptying that cell, ends it; the word "
    "empty tries an empty cell. A number has the unit beside it; a text may bring its own: 440 US gpm, 72 %, 1.2 bar(g). An empty cell is not zero: what needs it is refused. Grey is "
    "not used, struck out is given and not used."
)

VISCOUS, SOLIDS, LAMINAR = 'correction="viscosity"', 'correction="solids"', 'line_law="points"'

SOURCES = (
    (
        None,
        "Liquid: IAPWS R7-97(2012) and R12-08 for water; Clausius-Clapeyron between two points for vapour pressure; ASTM D341 for viscosity; ISO 2533 for the ambient pressure.",
    ),
    (
        'line_law="square"',
        "System: Darcy-Weisbach with Colebrook-White; losses taken as the square of the flow, from those at the flow wanted. Curve between its points: shape-preserving cubic.",
    ),
    (
        LAMINAR,
        "System: Darcy-Weisbach with 64/Re or Colebrook-White at each point of the pump's curve, for a line is not turbulent at the flow wanted. Curves between their points: shape-preserving cubic.",
    ),
    (None, "Suction: NPSH as ISO 17769-1 and ANSI/HI 9.6.1 define it; submergence ANSI/HI 9.8. Region: ANSI/HI 9.6.3."),
    (VISCOUS, "Viscous liquid: ISO/TR 17766 (ANSI/HI 9.6.7)."),
    (
        SOLIDS,
        "Solids: Engin and Gur 2003 or Cave 1976 for head and efficiency; Durand with the factor of Schiller and Herbich for the deposition velocity.",
    ),
    (
        None,
        "Motor: ISO 13709 or common practice for the margin, IEC 60072-1 for the ratings. Edition and clause, and whether they were read: docs/functions, a page for each function.",
    ),
)
CAUTIONS = (
    (
        None,
        "NPSH3 is the head at which the pump has already lost 3 % of its head; hot, gassy, toxic or boiling liquids and high suction energy ask for more margin than the limit here.",
    ),
    (
        "npsh_available-liquid_level<1",
        "The liquid is near boiling at its surface: the suction margin is the level's alone. Take the highest temperature and the lowest level there can be.",
    ),
    (
        None,
        "A thermal least flow says nothing of hydraulic stability: the maker's least flow counts too. Never run a pump against a closed valve; the heating shown leaves out all losses.",
    ),
    (
        VISCOUS,
        "The viscous correction is for one stage of conventional design. It leaves the power at closed valve as it is, which is too little for a viscous liquid. Check the coldest liquid, starting included.",
    ),
    (
        SOLIDS,
        "The correction for solids is for settling grains only; keep a margin above the deposition velocity, and check the heaviest slurry.",
    ),
    (
        LAMINAR,
        "In slow, viscous flow the loss of fittings is more than their K says, and between Re 2000 and 4000 the friction may be either of two values: the greater is taken.",
    ),
    ('shutoff_on="water"', "The power at closed valve was found on water and is taken in proportion to the density."),
    ("density_used>1050", "The liquid is heavier than water: power and pressure rise with the density, head does not."),
    (
        None,
        "Limits are inputs of this sheet, to be set by the engineer for the service. Results support a judgement; they replace neither the maker's guarantee nor the site's rules.",
    ),
)
