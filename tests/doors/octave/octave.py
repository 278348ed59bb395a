"""Runs Octave scripts against the package, and writes Octave's literals."""
import os
import pathlib
import struct
import subprocess
import tempfile


def literal(value):
    """A golden file's value as Octave writes it, to the last bit."""
    if value is None:
        return "[]"
    if isinstance(value, str):
        return '"' + value.replace("\\", "\\\\").replace('"', '\\"') + '"'
    if isinstance(value, list):
        if any(isinstance(item, str) for item in value):
            return "{" + ", ".join(map(literal, value)) + "}"
        return "[" + ", ".join(map(literal, value)) + "]"
    return f'hex2num("{struct.pack(">d", value).hex()}")'


def call(function, arguments):
    return f"cutwater.{function} ({', '.join(map(literal, arguments))})"


def number(text):
    """What num2hex printed."""
    return struct.unpack(">d", bytes.fromhex(text))[0]


SHOW = r"""
function show (value)
  if (isstruct (value))
    for [field, name] = value
      show (field);
    endfor
  elseif (ischar (value))
    printf ("\t\"%s\"", value);
  elseif (iscell (value))
    printf ("\t{"); printf ("%s|", value{:}); printf ("}");
  elseif (isscalar (value))
    printf ("\t%s", num2hex (value));
  else
    printf ("\t["); rows = num2hex (value(:)); for i = 1 : size (rows, 1), printf ("%s ", rows(i, :)); endfor; printf ("]");
  endif
endfunction
function try_call (where, call)
  try
    value = call ();
    printf ("%s\tok", where); show (value); printf ("\n");
  catch failed
    printf ("%s\terror\t%s\t%s\n", where, failed.identifier, strrep (failed.message, "\n", " "));
  end_try_catch
endfunction
"""


def run(script, path=None):
    """What the script prints. Cases are written as try_call ("where", @() …);"""
    with tempfile.TemporaryDirectory() as folder:
        file = pathlib.Path(folder, "script.m")
        file.write_text(f'addpath ("{path or os.environ["CUTWATER_OCTAVE_PACKAGE"]}");\n{SHOW}\n{script}\n', encoding="utf-8")
        done = subprocess.run([os.environ["CUTWATER_OCTAVE"], "--norc", "--no-gui", "--quiet", str(file)], capture_output=True,
                              encoding="utf-8", timeout=240, env={**os.environ, "HOME": folder})
    if done.returncode:
        raise AssertionError(done.stdout[-2000:] + done.stderr[-2000:])
    return done.stdout


def answers(calls):
    """{where: fields after it} of (where, call) pairs."""
    printed = run("\n".join(f'try_call ("{where}", @() {text});' for where, text in calls))
    return {line.split("\t")[0]: line.split("\t")[1:] for line in printed.splitlines() if "\t" in line}
