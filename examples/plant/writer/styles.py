"""Looks: cell styles, number formats, page layouts. Calm: slate heads, cream for what may be typed, colour only for findings."""

INK, SLATE, BAND, LINE, CREAM, CREAM_LINE = "#22302e", "#38544f", "#e7eeec", "#c3cfcc", "#fdf8e6", "#d8cc9f"
# Findings are told apart by lightness, so that they are in black and white too, and for any eye: dark, light, framed, plain.
DARK, LIGHT, LIGHT_INK, IDLE, IDLE_INK = "#4a1942", "#cfe0ee", "#123a5c", "#e4e7e6", "#8d9794"
FONT = 'style:font-name="Liberation Sans" fo:font-family="\'Liberation Sans\'"'


def _number(name, places):
    return (
        f'<number:number-style style:name="{name}"><number:number number:decimal-places="{places}" '
        f'number:min-decimal-places="{places}" number:min-integer-digits="1"/></number:number-style>'
    )


def _sense(name, sense, places):
    return _number(name, places).replace("<number:number ", f"<number:text>{sense} </number:text><number:number ", 1)


DATA_STYLES = "".join(_number(f"N{places}", places) for places in range(9))
DATA_STYLES += "".join(
    _sense(f"N{name}{places}", sense, places) for name, sense in (("le", "≤"), ("ge", "≥")) for places in range(9)
)


def _style(name, parent="Plain", data=None, cell="", text="", paragraph=""):
    data = f' style:data-style-name="{data}"' if data else ""
    parts = ""
    if cell:
        parts += f"<style:table-cell-properties {cell}/>"
    if paragraph:
        parts += f"<style:paragraph-properties {paragraph}/>"
    if text:
        parts += f"<style:text-properties {text}/>"
    return (
        f'<style:style style:name="{name}" style:family="table-cell" style:parent-style-name="{parent}"{data}>'
        f"{parts}</style:style>"
    )


_fit = 'style:shrink-to-fit="true"'  # a text that is too long gets smaller: cut at its beginning it would be another number
_under_wrap = f'fo:border-bottom="0.4pt solid {LINE}" style:vertical-align="middle"'
_under = f"{_under_wrap} {_fit}"
# Sheets are protected, without a password: what may be typed is what is cream.
_input_wrap = (
    f'fo:background-color="{CREAM}" fo:border="0.4pt solid {CREAM_LINE}" style:vertical-align="middle" fo:padding-left="0.02cm" '
    'fo:padding-right="0.08cm" style:cell-protect="none"'
)
_input = f"{_input_wrap} {_fit}"
_gap = 'fo:padding-left="0.05cm" fo:padding-right="0.1cm"'  # so that a number and the word after it stay apart
_right, _left, _centre = 'fo:text-align="end"', 'fo:text-align="start"', 'fo:text-align="center"'
_edge = 'fo:text-align="start" fo:margin-left="0.1cm"'

_cells = [
    f'<style:style style:name="Default" style:family="table-cell"><style:text-properties {FONT} fo:font-size="8pt" fo:color="{INK}"/></style:style>',
    _style("Plain", "Default", cell='style:vertical-align="middle"'),
    _style(
        "Title",
        cell='style:vertical-align="middle"',
        text=f'fo:font-size="15pt" fo:font-weight="bold" fo:color="{SLATE}"',
    ),
    _style(
        "BoxText",
        cell=f'fo:border="0.5pt solid {SLATE}" style:vertical-align="top" fo:wrap-option="wrap"',
        paragraph=_edge,
        text='fo:font-size="6.8pt" fo:font-weight="bold"',
    ),
    _style(
        "TextWrap",
        cell=f'fo:border-bottom="0.4pt solid {LINE}" style:vertical-align="top" fo:wrap-option="wrap"',
        paragraph=_edge,
        text='fo:font-size="6.5pt"',
    ),
    _style(
        "BoxInput",
        "BoxValue",
        cell=f'fo:border="0.5pt solid {SLATE}" fo:background-color="{CREAM}" style:vertical-align="middle" style:cell-protect="none" {_fit}',
        paragraph=_edge,
        text='fo:font-size="9pt" fo:font-weight="bold"',
    ),
    _style(
        "Works",
        cell='style:vertical-align="top" fo:wrap-option="wrap"',
        paragraph=_right,
        text=f'fo:font-size="7.5pt" fo:font-weight="bold" fo:color="{SLATE}"',
    ),
    _style(
        "Box",
        cell=f'fo:border="0.5pt solid {SLATE}" style:vertical-align="middle" {_fit}',
        paragraph=_edge,
        text='fo:font-size="7pt" fo:color="#5d6e6a"',
    ),
    _style(
        "BoxValue",
        cell=f'fo:border="0.5pt solid {SLATE}" style:vertical-align="middle" {_fit}',
        paragraph=_edge,
        text='fo:font-size="9pt" fo:font-weight="bold"',
    ),
    _style(
        "Head",
        cell=f'fo:background-color="{BAND}" fo:border-bottom="0.8pt solid {SLATE}" style:vertical-align="middle" fo:padding-left="0.12cm"',
        text=f'fo:font-weight="bold" fo:color="{SLATE}"',
    ),
    _style(
        "HeadRight",
        "Head",
        cell=f'fo:background-color="{BAND}" fo:border-bottom="0.8pt solid {SLATE}" style:vertical-align="middle" {_gap} {_fit}',
        paragraph=_right,
        text=f'fo:font-weight="bold" fo:color="{SLATE}"',
    ),
    _style("HeadCentre", "Head", paragraph=_centre),
    _style("HeadTag", "Head", cell=_fit, paragraph=_centre),
    _style(
        "HeadWrap",
        "Head",
        cell='fo:wrap-option="wrap" style:vertical-align="bottom"',
        paragraph=_right,
        text='fo:font-size="7.5pt"',
    ),
    _style("HeadWrapCentre", "HeadWrap", paragraph=_centre),
    _style(
        "HeadWrapLeft",
        "Head",
        cell='fo:wrap-option="wrap" style:vertical-align="bottom"',
        paragraph=_edge,
        text='fo:font-size="7.5pt"',
    ),
    _style(
        "HeadGroup",
        cell=f'fo:background-color="{BAND}" fo:border-bottom="0.4pt solid {LINE}" style:vertical-align="middle"',
        text=f'fo:font-weight="bold" fo:font-size="7.5pt" fo:color="{SLATE}"',
    ),
    _style(
        "Foot", cell='fo:wrap-option="wrap" style:vertical-align="top"', text='fo:font-size="6.8pt"', paragraph=_left
    ),
    _style("Label", cell=_under, paragraph=_edge),
    _style("Unit", cell=_under, text='fo:color="#5d6e6a" fo:font-size="7.5pt"', paragraph=_edge),
    _style("Small", cell=_under, text='fo:color="#5d6e6a" fo:font-size="7pt"', paragraph=_edge),
    _style("Key", cell=_under, text='fo:color="#8b9a96" fo:font-size="6.5pt"', paragraph=_edge),
    _style(
        "Note", cell='fo:wrap-option="wrap" style:vertical-align="top"', text='fo:font-size="7.5pt"', paragraph=_left
    ),
    _style("NoteInset", "Note", paragraph=_edge, text='fo:font-size="7.5pt" fo:color="#5d6e6a"'),
    _style("NoteBold", "Note", text='fo:font-weight="bold"'),
    _style("Input", cell=_input, paragraph=_right),
    _style("Input1", "Input", data="N1"),
    _style("InputText", cell=_input, paragraph=_edge),
    _style("InputTag", cell=_input, paragraph=_edge, text='fo:font-size="11pt" fo:font-weight="bold"'),
    _style("InputSmall", cell=_input_wrap + ' fo:wrap-option="wrap"', paragraph=_centre, text='fo:font-size="7pt"'),
    _style("InputTop", "InputSmall", cell='style:vertical-align="top"'),  # of what has no room the beginning is seen
    _style(
        "InputSmallPlain", cell=_under_wrap + ' fo:wrap-option="wrap"', paragraph=_centre, text='fo:font-size="7pt"'
    ),
    _style("Text", cell=_under, paragraph=_edge),
    _style("TextRight", cell=f"{_under} {_gap}", paragraph=_right),
    _style("Sense", cell=_under, paragraph=_right, text='fo:color="#5d6e6a"'),
    _style("Verdict", cell=_under, paragraph=_centre),
    _style(
        "VerdictBox",
        cell=f'fo:border="0.5pt solid {SLATE}" style:vertical-align="middle"',
        paragraph=_centre,
        text='fo:font-weight="bold"',
    ),
    _style(
        "Finding",
        cell='style:vertical-align="middle" fo:wrap-option="wrap"',
        text='fo:font-weight="bold"',
        paragraph=_left,
    ),
    _style("Meets", "Default", cell=_under, paragraph=_centre, text=f'fo:color="{INK}"'),
    _style(
        "Watch",
        "Default",
        cell=f'{_under} fo:background-color="{LIGHT}"',
        paragraph=_centre,
        text=f'fo:color="{LIGHT_INK}" fo:font-weight="bold"',
    ),
    _style(
        "Fails",
        "Default",
        cell=f'{_under} fo:background-color="{DARK}"',
        paragraph=_centre,
        text='fo:color="#ffffff" fo:font-weight="bold"',
    ),
    _style(
        "Refused",
        "Default",
        cell=f'fo:border="1.4pt solid {DARK}" style:vertical-align="middle" {_fit}',
        paragraph=_centre,
        text=f'fo:color="{DARK}" fo:font-weight="bold" fo:font-style="italic"',
    ),
    # Put over a cell by a condition: idle; given and not used; tried in place of Data; tried for another pump; a line that must be seen.
    _style("Idle", "Default", cell=f'fo:background-color="{IDLE}"', text=f'fo:color="{IDLE_INK}"'),
    _style(
        "Unused",
        "Default",
        cell=f'fo:border="1.4pt solid {DARK}"',
        text=f'fo:color="{DARK}" style:text-line-through-style="solid" style:text-line-through-type="single"',
    ),
    _style(
        "Tried",
        "Default",
        cell=f'fo:border="1.4pt solid {INK}" fo:background-color="#f6cf8f" {_fit}',
        text='fo:font-weight="bold"',
    ),
    _style(
        "Aside",
        "Default",
        cell=f'fo:background-color="{IDLE}"',
        text=f'fo:color="{IDLE_INK}" style:text-line-through-style="solid" style:text-line-through-type="single"',
    ),
    _style("Alarm", "Default", cell=f'fo:background-color="{INK}"', text='fo:color="#ffffff" fo:font-weight="bold"'),
    _style(
        "Banner",
        cell='style:vertical-align="middle" fo:wrap-option="wrap"',
        paragraph=_edge,
        text='fo:font-size="7.5pt" fo:font-weight="bold"',
    ),
    _style("Reason", cell=f'fo:border-bottom="0.4pt solid {LINE}" style:vertical-align="top" fo:wrap-option="wrap"', paragraph=_edge, text='fo:font-size="7pt"'),
]
_cells += [
    _style(f"Value{places}", cell=f"{_under} {_gap}", paragraph=_right, data=f"N{places}") for places in range(9)
]
_cells += [
    _style(f"Limit{name}{places}", cell=_under, paragraph=_left, data=f"N{name}{places}", text='fo:color="#5d6e6a"')
    for name in ("", "le", "ge")
    for places in range(9)
]


# name: width, height, margins (left, right), orientation, left footer
_UPRIGHT = (21.0, 29.7, 2.2, 1.4)
_PAGES = {"Upright": _UPRIGHT, "Wide": (29.7, 21.0, 1.4, 1.4), "Columns": (29.7, 21.0, 1.4, 1.4)}


def _layout(name):
    width, height, left, right = _PAGES[name]
    orientation = "landscape" if width > height else "portrait"
    # A sheet with a column a pump is as wide as there are pumps: it goes on over further pages, the first columns repeated.
    scale = 'style:scale-to="80%"' if name == "Columns" else 'style:scale-to-X="1" style:scale-to-Y="0"'
    edge = '<style:header-footer-properties fo:min-height="0.6cm" fo:margin-left="0cm" fo:margin-right="0cm" fo:margin-{}="0.2cm"/>'
    return (
        f'<style:page-layout style:name="p{name}"><style:page-layout-properties fo:page-width="{width}cm" fo:page-height="{height}cm" '
        f'style:print-orientation="{orientation}" fo:margin-top="1.2cm" fo:margin-bottom="1.1cm" fo:margin-left="{left}cm" '
        f'fo:margin-right="{right}cm" {scale} style:first-page-number="continue" style:print-page-order="ttb"/>'
        f'<style:header-style/><style:footer-style>{edge.format("top")}</style:footer-style></style:page-layout>'
    )


class Styles:
    named = "".join(_cells)

    def __init__(self, footer):
        small = '<style:style style:name="T1" style:family="text"><style:text-properties fo:font-size="7pt" fo:color="#5d6e6a"/></style:style>'
        tables = "".join(
            f'<style:style style:name="t{name}" style:family="table" style:master-page-name="{name}">'
            '<style:table-properties table:display="true" style:writing-mode="lr-tb"/></style:style>'
            for name in _PAGES
        )
        self.automatic = (
            small
            + tables
            + "".join(_layout(name) for name in _PAGES)
            + (
                '<style:style style:name="frame" style:family="graphic"><style:graphic-properties draw:stroke="none" draw:fill="none"/></style:style>'
            )
        )
        span = '<text:span text:style-name="T1">{}</text:span>'
        page = span.format(
            "<text:sheet-name>?</text:sheet-name>, page <text:page-number>1</text:page-number> of <text:page-count>1</text:page-count>"
        )
        self.masters = "".join(
            f'<style:master-page style:name="{name}" style:page-layout-name="p{name}"><style:header style:display="false"/><style:footer>'
            f"<style:region-left><text:p>{span.format(footer)}</text:p></style:region-left>"
            f"<style:region-right><text:p>{page}</text:p></style:region-right></style:footer></style:master-page>"
            for name in _PAGES
        )
