"""The record as Markdown: a page of totals and a page a family. Holds neither date nor compiler, so that it can be committed."""
import kinds
import words

MADE = "<!-- Made by `cmake --build BUILD --target validation`; change the golden files instead. -->"


def cell(text):
    return text.replace("|", "\\|").replace("*", "\\*").replace("_", "\\_").replace("<", "&lt;")


def table(head, rows):
    lines = ["| " + " | ".join(head) + " |", "|" + "---|" * len(head)]
    return lines + ["| " + " | ".join(map(str, row)) + " |" for row in rows]


def summary(record):
    lines = [MADE, "# " + words.TITLE, "", words.WHAT, "",
             "`cmake --build BUILD --target validation` makes the same as a PDF to file, with version, compiler and date, in "
             "`BUILD/validation/validation.pdf`.", ""]
    lines += table(("", "count"), [(cell(what), count) for what, count in words.totals(record)])
    for family, functions in words.families(record).items():
        lines += ["", f"## [{family}]({family}.md)", ""]
        lines += table(("function", *kinds.KINDS, "refusals"),
                       [(f"[{f.name}]({family}.md#{f.name})",
                         *(sum(len(c.cases) for c in f.checks if c.kind == kind) or "" for kind in kinds.KINDS), f.refusals or "")
                        for f in functions])
    argued = [f for f in record.functions if f.why_none]
    if argued:
        lines += ["", "## Without an outside witness, and why", ""]
        lines += [f"- [{f.name}]({f.family}.md#{f.name}): {cell(f.why_none)}" for f in argued]
    return "\n".join(lines) + "\n"


def family_page(family, functions):
    lines = [MADE, f"# {words.TITLE}: {family}", "", "[Totals and what the words mean](README.md)"]
    for f in functions:
        lines += ["", f"## {f.name}", ""]
        if f.why_none:
            lines += [f"No outside witness: {cell(f.why_none)}", ""]
        rows = []
        for check in f.checks:
            far, call = words.worst(check)
            rows.append((check.kind, cell(check.source), len(check.cases), words.bounds(check), far, f"`{call.replace('|', ' ')}`"))
        lines += table(("kind", "source", "cases", "bound", "worst deviation", "at"), rows)
        if f.refusals:
            lines += ["", f"Refused as they must be: {f.refusals} calls."]
    return "\n".join(lines) + "\n"


def pages(record):
    """{file name: text}"""
    made = {"README.md": summary(record)}
    for family, functions in words.families(record).items():
        made[family + ".md"] = family_page(family, functions)
    return made
