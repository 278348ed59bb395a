"""An XY chart in a frame: series are (label cell, x range, y range, look)."""
from xml.sax.saxutils import escape

# look: colour, line width in cm or none, symbol or none, dash
LOOKS = {
    "pump": ("#1f4e5f", 0.055, None),
    "water": ("#9db4ba", 0.035, None),
    "system": ("#b3652a", 0.055, None),
    "duty": ("#8f2413", None, "circle"),
    "wanted": ("#22302e", None, "x"),
    "needed": ("#b3652a", 0.055, None),
    "offered": ("#1f4e5f", 0.055, None),
    "efficiency": ("#3f7d4e", 0.055, None),
    "power": ("#6a4a7c", 0.055, None),
    "points": ("#1f4e5f", None, "diamond"),
    "bar": ("#8f2413", 0.08, None),
}


def _series_style(index, look):
    colour, width, symbol = LOOKS[look]
    if symbol:
        mark = f'chart:symbol-type="named-symbol" chart:symbol-name="{symbol}" chart:symbol-width="0.28cm" chart:symbol-height="0.28cm"'
        stroke = 'draw:stroke="none"'
    else:
        mark, stroke = 'chart:symbol-type="none"', f'draw:stroke="solid" svg:stroke-width="{width}cm"'
    return (
        f'<style:style style:name="s{index}" style:family="chart"><style:chart-properties {mark}/>'
        f'<style:graphic-properties {stroke} svg:stroke-color="{colour}" draw:fill-color="{colour}"/></style:style>'
    )


def _axis_style(name, at, number, least=' chart:minimum="0"'):
    return (
        f'<style:style style:name="{name}" style:family="chart" style:data-style-name="{number}"><style:chart-properties chart:display-label="true" '
        f'chart:tick-marks-major-outer="true" chart:logarithmic="false" chart:link-data-style-to-source="false" chart:axis-position="{at}"{least}/>'
        '<style:graphic-properties svg:stroke-color="#7c8b87"/>'
        '<style:text-properties fo:font-size="7.5pt" fo:font-family="\'Liberation Sans\'"/></style:style>'
    )


def _axis(dimension, name, style, title, title_style, grid):
    lines = '<chart:grid chart:style-name="gr" chart:class="major"/>' if grid else ""
    return (
        f'<chart:axis chart:dimension="{dimension}" chart:name="{name}" chart:style-name="{style}"><chart:title chart:style-name="{title_style}">'
        f"<text:p>{escape(title)}</text:p></chart:title>{lines}</chart:axis>"
    )


def frame(
    order,
    x,
    y,
    width,
    height,
    title,
    x_title,
    y_title,
    series,
    second_title=None,
    y_number="C0",
    second_number="C0",
    from_zero=True,
    below=2.1,
):
    """series: (label, x range, y range, look, on the second axis). The axes begin at 0 unless told otherwise; below: room for title, axis and legend."""
    least = () if from_zero else ("",)
    styles = "".join(_series_style(i, one[3]) for i, one in enumerate(series))
    automatic = (
        '<number:number-style style:name="C0"><number:number number:decimal-places="0" number:min-integer-digits="1"/></number:number-style>'
        '<number:number-style style:name="C1"><number:number number:decimal-places="1" number:min-decimal-places="1" number:min-integer-digits="1"/></number:number-style>'
        '<style:style style:name="ch" style:family="chart"><style:graphic-properties draw:stroke="solid" svg:stroke-color="#c3cfcc" draw:fill="solid" draw:fill-color="#ffffff"/></style:style>'
        '<style:style style:name="ti" style:family="chart"><style:text-properties fo:font-size="9.5pt" fo:font-weight="bold" fo:color="#38544f" fo:font-family="\'Liberation Sans\'"/></style:style>'
        '<style:style style:name="at" style:family="chart"><style:text-properties fo:font-size="8pt" fo:font-family="\'Liberation Sans\'"/></style:style>'
        '<style:style style:name="ay" style:family="chart"><style:chart-properties style:rotation-angle="90"/><style:text-properties fo:font-size="8pt" fo:font-family="\'Liberation Sans\'"/></style:style>'
        '<style:style style:name="wa" style:family="chart"><style:graphic-properties draw:stroke="solid" svg:stroke-color="#c3cfcc" draw:fill="none"/></style:style>'
        '<style:style style:name="le" style:family="chart"><style:graphic-properties draw:stroke="none" draw:fill="none"/><style:text-properties fo:font-size="7.5pt" fo:font-family="\'Liberation Sans\'"/></style:style>'
        '<style:style style:name="pl" style:family="chart"><style:chart-properties chart:symbol-type="none" chart:interpolation="cubic-spline" chart:spline-resolution="12" '
        'chart:include-hidden-cells="false" chart:treat-empty-cells="leave-gap"/></style:style>'
        '<style:style style:name="gr" style:family="chart"><style:graphic-properties svg:stroke-color="#dfe6e4"/></style:style>'
        + _axis_style("x1", "start", "C0", *least)
        + _axis_style("y1", "start", y_number, *least)
        + _axis_style("y2", "end", second_number)
        + styles
    )
    lines = "".join(
        f'<chart:series chart:style-name="s{i}" chart:values-cell-range-address="{ys}" chart:label-cell-address="{label}" chart:class="chart:scatter" '
        f'chart:attached-axis="{"secondary-y" if second else "primary-y"}"><chart:domain table:cell-range-address="{xs}"/></chart:series>'
        for i, (label, xs, ys, _, second) in enumerate(series)
    )
    right = 2.05 if second_title else 1.35  # room for the titles of the axes, left and right
    second_axis = _axis("y", "secondary-y", "y2", second_title, "ay", False) if second_title else ""
    body = (
        f'<chart:chart svg:width="{width}cm" svg:height="{height}cm" xlink:href=".." xlink:type="simple" chart:class="chart:scatter" chart:style-name="ch">'
        f'<chart:title chart:style-name="ti"><text:p>{escape(title)}</text:p></chart:title>'
        '<chart:legend chart:legend-position="bottom" style:legend-expansion="wide" chart:style-name="le"/>'
        f'<chart:plot-area chart:style-name="pl" chart:data-source-has-labels="none" svg:x="0.95cm" svg:y="0.85cm" svg:width="{width - right:.2f}cm" svg:height="{height - below:.2f}cm">'
        f'{_axis("x", "primary-x", "x1", x_title, "at", True)}{_axis("y", "primary-y", "y1", y_title, "ay", True)}{second_axis}'
        f'{lines}<chart:wall chart:style-name="wa"/></chart:plot-area></chart:chart>'
    )
    return (
        f'<draw:frame draw:z-index="{order}" draw:style-name="frame" svg:width="{width}cm" svg:height="{height}cm" svg:x="{x}cm" svg:y="{y}cm">'
        '<draw:object><office:document office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.chart">'
        f"<office:automatic-styles>{automatic}</office:automatic-styles><office:body><office:chart>{body}</office:chart></office:body>"
        "</office:document></draw:object></draw:frame>"
    )
