"""The documents as a site that can be searched without a network; made by docs/site/make."""
import os
import pathlib

from pygments.lexers.special import TextLexer

from pygments.lexers import TextLexer

project = "cutwater"
html_show_copyright = False
extensions = ["myst_parser"]
root_doc = "index"
html_theme = "furo"
html_title = "cutwater"
html_theme_options = {"light_css_variables": {"font-size--normal": "95%"}}
html_static_path = ["docs/site/static"]
html_css_files = ["pages.css"]
html_copy_source = html_show_sourcelink = False
html_show_sphinx = False
myst_heading_anchors = 3
suppress_warnings = ["misc.highlighting_failure"]
smartquotes = False  # arguments and equations stand as they are typed


def plain_text(app, env, node, contnode):
    """A link to a source file or a folder, which are no pages, becomes its text; one to nothing at all stays a warning."""
    here = pathlib.Path(env.doc2path(node["refdoc"], base=False)).parent
    if (pathlib.Path(os.environ["CUTWATER_SOURCE"]) / here / node["reftarget"]).exists():
        return contnode
    return None


def setup(app):
    app.add_lexer("cells", TextLexer)
    app.connect("missing-reference", plain_text)
    app.add_lexer("cells", TextLexer)  # formulas as they stand in a worksheet
