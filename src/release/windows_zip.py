"""The zip for Windows: what an engineer and a programmer take, the guide, the licences of all that is inside, and checksums.
   windows_zip.py --source FOLDER --native BUILD --windows CROSS_BUILD --target FILE.zip"""
import argparse
import hashlib
import pathlib
import re
import zipfile

# What is compiled into the DLL and the add-in, and where Debian keeps its terms. GPL-3 is what GCC's Runtime Library Exception, in
# gcc_runtime.txt, refers to.
DOC = pathlib.Path("/usr/share/doc")
# Each with words that must stand in it, lest a package of another version gives something else.
TERMS = {
    "boost.txt": (DOC / "libboost1.74-dev/copyright", "Boost Software License - Version 1.0", "DEALINGS IN THE SOFTWARE."),
    "fmt.txt": (DOC / "libfmt-dev/copyright", "Victor Zverovich", "Permission is hereby granted"),
    "gcc_runtime.txt": (DOC / "gcc-mingw-w64-x86-64-posix-runtime/copyright", "GCC RUNTIME LIBRARY EXCEPTION", "Eligible Compilation Process"),
    "gpl_3.txt": (pathlib.Path("/usr/share/common-licenses/GPL-3"), "GNU GENERAL PUBLIC LICENSE", "Version 3"),
    "mingw_w64_and_winpthreads.txt": (DOC / "mingw-w64-x86-64-dev/copyright", "winpthreads", "Lockless"),
}
READ_ME = """cutwater {version} for 64-bit Windows

Begin with guide\\docs\\guide\\excel.html: open it with a double click.

Before anything is unpacked: right-click the zip, Properties, tick Unblock if it is there, OK. Then right-click, Extract All.

excel\\cutwater.xll          the functions in Excel's cells: the only file that is needed for them
excel\\cutwater.dll          the library, for macros and programs
excel\\cutwater.bas          the macro module
excel\\cutwater_names.bas    two macros that turn the names in a workbook's formulas from short to full ones and back
excel\\plant.xlsx            the workbook of a fictitious works, filled in
excel\\pumps.xlsx            the same for pumps of your own
libreoffice\\cutwater-portable.oxt    the functions in LibreOffice Calc
programs\\                   headers and import library for C and C++; catalogue.json, every function as data
licences\\                   the terms of cutwater and of all that is compiled in
SHA256SUMS                  a checksum of every file

Nothing of this has been run in Excel or on Windows itself yet; the guide says what was run, and how.
A calculated value is a guide: the pump maker's data and limits, local codes and a licensed engineer's judgement go before it.
"""
DATE = (2000, 1, 1, 0, 0, 0)  # one for all, so that the same products give the same file


def gathered(source, native, windows):
    """{place in the zip: contents}"""
    files = {}

    def take(place, file):
        files[place] = file.read_bytes()

    version = re.search(r"project\(cutwater VERSION (\S+)", (source / "CMakeLists.txt").read_text(encoding="utf-8"))[1]
    files["READ_ME.txt"] = READ_ME.format(version=version).replace("\n", "\r\n").encode("ascii")
    for name in ("cutwater.xll", "cutwater.dll"):
        take(f"excel/{name}", windows / "bin" / name)
    for name in ("cutwater.bas", "cutwater_names.bas"):
        take(f"excel/{name}", native / "generated/excel" / name)
    for name in ("plant.xlsx", "pumps.xlsx"):
        take(f"excel/{name}", native / "workbooks" / name)
    take("libreoffice/cutwater-portable.oxt", native / "cutwater-portable.oxt")
    take("programs/lib/cutwater.lib", windows / "cutwater.lib")
    for folder in (source / "include", native / "generated/include"):  # the generated ones after the committed, which may be older
        for file in sorted(folder.rglob("*.h*")):
            take(f"programs/include/{file.relative_to(folder).as_posix()}", file)
    take("programs/catalogue.json", native / "generated/catalogue.json")
    site = native / "site"
    for file in sorted(p for p in site.rglob("*") if p.is_file()):
        take(f"guide/{file.relative_to(site).as_posix()}", file)
    for name in ("LICENSE", "NOTICE"):
        take(f"licences/{name}.txt", source / name)
    for name, (file, begin, end) in TERMS.items():
        text = file.read_text(encoding="utf-8")
        if begin not in text or end not in text:
            raise SystemExit(f"{file} does not hold the terms of {name}")
        if name == "boost.txt":  # its file lists every author of every header for half a megabyte and more; the licence asks less
            text = text[text.index(begin):]
            text = text[:text.index(end) + len(end)] + "\n"
        files[f"licences/{name}"] = text.encode("utf-8")
    sums = "".join(f"{hashlib.sha256(data).hexdigest()}  {place}\n" for place, data in sorted(files.items()))
    files["SHA256SUMS"] = sums.encode("ascii")
    return files


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    for name in ("source", "native", "windows", "target"):
        parser.add_argument(f"--{name}", type=pathlib.Path, required=True)
    given = parser.parse_args()
    with zipfile.ZipFile(given.target, "w", zipfile.ZIP_DEFLATED) as made:
        for place, data in sorted(gathered(given.source, given.native, given.windows).items()):
            made.writestr(zipfile.ZipInfo(f"cutwater/{place}", DATE), data, zipfile.ZIP_DEFLATED)


if __name__ == "__main__":
    main()
