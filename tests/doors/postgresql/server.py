"""A PostgreSQL server of the test's own: installed, made, started and stopped here, in a folder of its own, never as root.

The server looks for extensions where its own program lies, so the program is copied beside what `cmake --install` puts there and
nothing of the machine's own installation is touched.
"""
import atexit
import json
import os
import pathlib
import pwd
import re
import shutil
import subprocess
import tempfile

import psycopg2

BUILD = pathlib.Path(os.environ["CUTWATER_BUILD"])
SOURCE = pathlib.Path(os.environ["CUTWATER_SOURCE"])
CATALOGUE = json.loads(pathlib.Path(os.environ["CUTWATER_CATALOGUE"]).read_text(encoding="utf-8"))
FUNCTIONS = {f["name"]: f for f in CATALOGUE["functions"]}
HEADER = pathlib.Path(SOURCE, "include/cutwater/status.h").read_text(encoding="utf-8")
STATUS = {int(value): name.lower() for name, value in re.findall(r"CUTWATER_(\w+) = (\d+)", HEADER)}
SQLSTATE = {name: f"WT0{value:02}" for value, name in STATUS.items()}
SETTINGS = {"listen_addresses": "''", "fsync": "off", "shared_buffers": "64MB", "max_worker_processes": "8", "log_min_messages": "fatal"}


def configured(what):
    return pathlib.Path(subprocess.run([os.environ["CUTWATER_PG_CONFIG"], f"--{what}"], check=True, capture_output=True, encoding="utf-8").stdout.strip())


def as_nobody():
    """What runs a command as somebody who is not root."""
    if os.getuid():
        return [], os.getuid(), os.getgid()
    try:
        user = pwd.getpwnam("postgres")
    except KeyError:
        user = pwd.getpwnam("nobody")
    return ["setpriv", f"--reuid={user.pw_uid}", f"--regid={user.pw_gid}", "--clear-groups"], user.pw_uid, user.pw_gid


class Server:
    def __init__(self):
        self.root = pathlib.Path(tempfile.mkdtemp(prefix="cutwater-"))
        self.runner, user, group = as_nobody()
        atexit.register(self.remove)
        os.chmod(self.root, 0o755)
        self.programs = self.inside(configured("bindir"))
        self.extensions = self.inside(configured("sharedir")) / "extension"
        subprocess.run(["cmake", "--install", BUILD, "--component", "postgresql"], check=True, stdout=subprocess.DEVNULL,
                       env={**os.environ, "DESTDIR": str(self.root)})
        for folder in ("bindir", "pkglibdir", "sharedir"):
            self.link(configured(folder), copied=("postgres", "initdb", "pg_ctl") if folder == "bindir" else ())
        self.sockets = self.root / "run"
        self.sockets.mkdir()
        os.chown(self.sockets, user, group)
        self.data = self.sockets / "data"
        self.run("initdb", "-D", self.data, "-U", "postgres", "-A", "trust", "-E", "UTF8", "--locale=C.UTF-8", "--no-sync", "--no-instructions")
        with open(self.data / "postgresql.conf", "a", encoding="utf-8") as file:
            file.writelines(f"{name} = {value}\n" for name, value in {**SETTINGS, "unix_socket_directories": f"'{self.sockets}'"}.items())
        self.run("pg_ctl", "-D", self.data, "-l", self.sockets / "log", "-w", "-t", "60", "start")

    def inside(self, path):
        return self.root / path.relative_to("/")

    def link(self, folder, copied):
        """What the machine has, by links; what a server finds itself by is copied."""
        to = self.inside(folder)
        to.mkdir(parents=True, exist_ok=True)
        for entry in folder.iterdir():
            if (to / entry.name).is_dir():
                self.link(entry, ())
            elif not (to / entry.name).exists() and not entry.name.startswith("cutwater"):
                if entry.name in copied:
                    shutil.copy2(entry, to / entry.name)
                else:
                    (to / entry.name).symlink_to(entry)

    def run(self, program, *arguments):
        done = subprocess.run([*self.runner, self.programs / program, *arguments], cwd=self.sockets, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                              stdin=subprocess.DEVNULL, encoding="utf-8", timeout=120, env={"PATH": os.environ["PATH"], "LC_ALL": "C.UTF-8"})
        if done.returncode:
            raise AssertionError(f"{program}: {done.stdout}")

    def remove(self):
        if getattr(self, "data", None) and (self.data / "postmaster.pid").exists():
            self.run("pg_ctl", "-D", self.data, "-m", "immediate", "-w", "stop")
        shutil.rmtree(self.root)

    def connect(self, database="postgres"):
        connection = psycopg2.connect(host=str(self.sockets), user="postgres", dbname=database)
        connection.autocommit = True
        return connection

    def database(self, name, more=""):
        """A new database, with the extension in it."""
        first = self.connect()
        first.cursor().execute(f"CREATE DATABASE {name} {more}")
        first.close()
        connection = self.connect(name)
        connection.cursor().execute("CREATE EXTENSION cutwater")
        return connection

    def psql(self, database, script):
        done = subprocess.run(["psql", "-X", "-h", self.sockets, "-U", "postgres", "-d", database, "-A", "-t", "-q"], input=script, stdout=subprocess.PIPE,
                              stderr=subprocess.STDOUT, encoding="utf-8", timeout=120)
        return done.stdout.splitlines()

    def log(self):
        return (self.sockets / "log").read_text(encoding="utf-8", errors="replace")


_started = []


def the_server():
    """One for all the tests of a run."""
    if not _started:
        _started.append(Server())
    return _started[0]


def typed(kind, texts):
    """A mark for a value of that kind."""
    one = "text" if texts or kind == "choice" else "double precision"
    return f"%s::{one}{'[]' if kind == 'series' else ''}"


def texts_needed(arguments, inputs):
    return any(isinstance(item, str) for value, input in zip(arguments, inputs) if input["kind"] != "choice"
               for item in (value if isinstance(value, list) else [value]))


def call(name, arguments, texts=None):
    """The SQL of a call and its values: as numbers, or all as texts where one of them is a text."""
    inputs = FUNCTIONS[name.removesuffix("_checked")]["inputs"]
    if texts is None:
        texts = texts_needed(arguments, inputs)
    marks, values = [], []
    for value, input in zip(arguments, inputs, strict=False):
        marks.append(typed(input["kind"], texts))
        if texts and input["kind"] != "choice":
            value = [as_text(one) for one in value] if isinstance(value, list) else as_text(value)
        values.append(value)
    return f"{name}({', '.join(marks)})", values


def as_text(value):
    return value if value is None or isinstance(value, str) else repr(float(value))
