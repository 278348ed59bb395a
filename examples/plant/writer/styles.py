"""Looks: cell styles, number formats, page layouts. Calm: slate heads, cream for what may be typed, colour only for findings."""

from .odf import CONDITIONAL

INK, SLATE, BAND, LINE, CREAM, CREAM_LINE = "#22302e", "#38544f", "#e7eeec", "#c3cfcc", "#fdf8e6", "#d8cc9f"
FONT = 'style:font-name="Liberation Sans" fo:font-family="\'Liberation Sans\'"'


def _number(name, places):
    return (f'<number:number-style style:name="{name}"><number:number number:decimal-places="{places}" '
            f'number:min-decimal-places="{places}" number:min-integer-digits="1"/></number:number-style>')


DATA_STYLES = "".join(_number(f"N{places}", places) for places in range(9))


def _style(name, parent="Plain", data=None, maps="", cell="", text="", paragraph=""):
    data = f' style:data-style-name="{data}"' if data else ""
    parts = ""
    if cell:
        parts += f"<style:table-cell-properties {cell}/>"
    if paragraph:
        parts += f"<style:paragraph-properties {paragraph}/>"
    if text:
        parts += f"<style:text-properties {text}/>"
    return (f'<style:style style:name="{name}" style:family="table-cell" style:parent-style-name="{parent}"{data}>'
            f"{parts}{maps}</style:style>")


_WORDS = (("FAILS", "Fails"), ("WATCH", "Watch"), ("refused", "Refused"), ("meets", "Meets"))
_MAPS = "".join(f'<style:map style:condition="cell-content()=&quot;{word}&quot;" style:apply-style-name="{style}" style:base-cell-address="Register.A1"/>' for word, style in _WORDS)
_MAPS += ('<style:map style:condition="cell-content()=&quot;differs&quot;" style:apply-style-name="Fails" style:base-cell-address="Register.A1"/>'
          '<style:map style:condition="cell-content()=&quot;same&quot;" style:apply-style-name="Meets" style:base-cell-address="Register.A1"/>')
_under = f'fo:border-bottom="0.4pt solid {LINE}" style:vertical-align="middle"'
_input = f'fo:background-color="{CREAM}" fo:border="0.4pt solid {CREAM_LINE}" style:vertical-align="middle" fo:padding-left="0.02cm" fo:padding-right="0.08cm"'
_right, _left, _centre = 'fo:text-align="end"', 'fo:text-align="start"', 'fo:text-align="center"'
_edge = 'fo:text-align="start" fo:margin-left="0.1cm"'

_cells = [
    f'<style:style style:name="Default" style:family="table-cell"><style:text-properties {FONT} fo:font-size="8pt" fo:color="{INK}"/></style:style>',
    _style("Plain", "Default", cell='style:vertical-align="middle"'),
    _style("Title", cell='style:vertical-align="middle"', text=f'fo:font-size="15pt" fo:font-weight="bold" fo:color="{SLATE}"'),
    _style("Works", cell='style:vertical-align="middle"', text=f'fo:font-size="9.5pt" fo:font-weight="bold" fo:color="{SLATE}"'),
    _style("Box", cell=f'fo:border="0.5pt solid {SLATE}" style:vertical-align="middle"', paragraph=_edge, text='fo:font-size="7pt" fo:color="#5d6e6a"'),
    _style("BoxValue", cell=f'fo:border="0.5pt solid {SLATE}" style:vertical-align="middle"', paragraph=_edge,
           text='fo:font-size="9pt" fo:font-weight="bold"'),
    _style("Head", cell=f'fo:background-color="{BAND}" fo:border-bottom="0.8pt solid {SLATE}" style:vertical-align="middle"',
           text=f'fo:font-weight="bold" fo:color="{SLATE}"'),
    _style("HeadRight", "Head", paragraph=_right),
    _style("HeadCentre", "Head", paragraph=_centre),
    _style("HeadWrap", "Head", cell='fo:wrap-option="wrap" style:vertical-align="bottom"', paragraph=_right, text='fo:font-size="7.5pt"'),
    _style("HeadWrapCentre", "HeadWrap", paragraph=_centre),
    _style("HeadWrapLeft", "Head", cell='fo:wrap-option="wrap" style:vertical-align="bottom"', paragraph=_edge, text='fo:font-size="7.5pt"'),
    _style("HeadGroup", cell=f'fo:background-color="{BAND}" fo:border-bottom="0.4pt solid {LINE}" style:vertical-align="middle"',
           text=f'fo:font-weight="bold" fo:font-size="7.5pt" fo:color="{SLATE}"'),
    _style("Foot", cell='fo:wrap-option="wrap" style:vertical-align="top"', text='fo:font-size="6.8pt"', paragraph=_left),
    _style("Label", cell=_under, paragraph=_edge),
    _style("Unit", cell=_under, text='fo:color="#5d6e6a" fo:font-size="7.5pt"', paragraph=_edge),
    _style("Small", cell=_under, text='fo:color="#5d6e6a" fo:font-size="7pt"', paragraph=_edge),
    _style("Key", cell=_under, text='fo:color="#8b9a96" fo:font-size="6.5pt"', paragraph=_edge),
    _style("Note", cell='fo:wrap-option="wrap" style:vertical-align="top"', text='fo:font-size="7.5pt"', paragraph=_left),
    _style("NoteInset", "Note", paragraph=_edge, text='fo:font-size="7.5pt" fo:color="#5d6e6a"'),
    _style("NoteBold", "Note", text='fo:font-weight="bold"'),
    _style("Input", cell=_input, paragraph=_right),
    _style("Input1", "Input", data="N1"),
    _style("InputText", cell=_input, paragraph=_edge),
    _style("InputTag", cell=_input, paragraph=_edge, text='fo:font-size="11pt" fo:font-weight="bold"'),
    _style("InputSmall", cell=_input + ' fo:wrap-option="wrap"', paragraph=_centre, text='fo:font-size="7pt"'),
    _style("InputSmallPlain", cell=_under + ' fo:wrap-option="wrap"', paragraph=_centre, text='fo:font-size="7pt"'),
    _style("Text", cell=_under, paragraph=_edge),
    _style("TextRight", cell=_under, paragraph=_right),
    _style("Sense", cell=_under, paragraph=_right, text='fo:color="#5d6e6a"'),
    _style("VerdictLook", cell=_under, paragraph=_centre),
    _style("VerdictBoxLook", cell=f'fo:border="0.5pt solid {SLATE}" style:vertical-align="middle"', paragraph=_centre, text='fo:font-weight="bold"'),
    _style("Finding", cell='style:vertical-align="middle" fo:wrap-option="wrap"', text='fo:font-weight="bold"', paragraph=_left),
    _style("Meets", "Default", cell=f'{_under}', paragraph=_centre, text='fo:color="#2f6b3a"'),
    _style("Watch", "Default", cell=f'{_under} fo:background-color="#fbe9c7"', paragraph=_centre, text='fo:color="#7a5200" fo:font-weight="bold"'),
    _style("Fails", "Default", cell=f'{_under} fo:background-color="#f5d5cc"', paragraph=_centre, text='fo:color="#8f2413" fo:font-weight="bold"'),
    _style("Refused", "Default", cell=f'{_under} fo:background-color="#e3daec"', paragraph=_centre, text='fo:color="#5a3b7c" fo:font-weight="bold"'),
]
_cells += [_style(f"Value{places}", cell=_under, paragraph=_right, data=f"N{places}") for places in range(9)]
_cells += [_style(f"Limit{places}", cell=_under, paragraph=_left, data=f"N{places}", text='fo:color="#5d6e6a"') for places in range(9)]

# Only a file's automatic styles may depend on the cell's content.
def _conditional(sheets):
    return "".join(_style(name + sheet, name + "Look", maps=_MAPS.replace("Register.A1", sheet + ".A1")) for name in CONDITIONAL for sheet in sheets)


# name: width, height, margins (left, right), orientation, left footer
_UPRIGHT = (21.0, 29.7, 2.2, 1.4)
_PAGES = {"Service": _UPRIGHT, "Energy": _UPRIGHT, "Acceptance": _UPRIGHT, "Parallel": _UPRIGHT, "Rotor": _UPRIGHT, "Seal": _UPRIGHT, "Clearance": _UPRIGHT, "Containment": _UPRIGHT, "Wide": (29.7, 21.0, 1.4, 1.4)}


def _layout(name):
    width, height, left, right = _PAGES[name]
    orientation = "landscape" if width > height else "portrait"
    edge = '<style:header-footer-properties fo:min-height="0.6cm" fo:margin-left="0cm" fo:margin-right="0cm" fo:margin-{}="0.2cm"/>'
    return (f'<style:page-layout style:name="p{name}"><style:page-layout-properties fo:page-width="{width}cm" fo:page-height="{height}cm" '
            f'style:print-orientation="{orientation}" fo:margin-top="1.2cm" fo:margin-bottom="1.1cm" fo:margin-left="{left}cm" '
            f'fo:margin-right="{right}cm" style:scale-to-X="1" style:scale-to-Y="0" style:first-page-number="1" style:print-page-order="ttb"/>'
            f'<style:header-style/><style:footer-style>{edge.format("top")}</style:footer-style></style:page-layout>')


class Styles:
    named = "".join(_cells)

    def __init__(self, footer, sheets):
        small = '<style:style style:name="T1" style:family="text"><style:text-properties fo:font-size="7pt" fo:color="#5d6e6a"/></style:style>'
        tables = "".join(f'<style:style style:name="t{name}" style:family="table" style:master-page-name="{name}">'
                         '<style:table-properties table:display="true" style:writing-mode="lr-tb"/></style:style>' for name in _PAGES)
        self.automatic = small + _conditional(sheets) + tables + "".join(_layout(name) for name in _PAGES) + (
            '<style:style style:name="frame" style:family="graphic"><style:graphic-properties draw:stroke="none" draw:fill="none"/></style:style>')
        span = '<text:span text:style-name="T1">{}</text:span>'
        page = span.format('<text:sheet-name>?</text:sheet-name>, page <text:page-number>1</text:page-number>')
        self.masters = "".join(
            f'<style:master-page style:name="{name}" style:page-layout-name="p{name}"><style:header style:display="false"/><style:footer>'
            f"<style:region-left><text:p>{span.format(footer)}</text:p></style:region-left>"
            f"<style:region-right><text:p>{page}</text:p></style:region-right></style:footer></style:master-page>" for name in _PAGES)
