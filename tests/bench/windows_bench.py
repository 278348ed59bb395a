"""Runs the benchmark natively and under Wine, turn by turn, and prints the least time of each line on either side.
   windows_bench.py ROUNDS NATIVE_BENCH WINE WINDOWS_BENCH"""
import re
import subprocess
import sys

LINE = re.compile(r"(.+?)\s+([\d.]+)(?:\s+([\d.]+))?\s+(ns|us|ms|s)\b")


def times(*command):
    """{what: (ours, by hand or None, unit)}"""
    text = subprocess.run(command, check=True, capture_output=True, encoding="utf-8").stdout
    before, found = "", {}
    for line in text.splitlines()[1:]:
        read = LINE.match(line)
        if not read:
            raise SystemExit(f"not a line of the benchmark: {line}")
        what = f"{before} {read[1].strip()}" if line.startswith(" ") else read[1]
        if not line.startswith(" "):
            before = read[1].split(":")[0] + ","
        found[what] = (float(read[2]), float(read[3]) if read[3] else None, read[4])
    return found


def least(one, other):
    return {what: (min(ours, other[what][0]), hand and min(hand, other[what][1]), unit) for what, (ours, hand, unit) in one.items()}


def shown(value):
    return "" if value is None else f"{value:.3g}" if value < 1000 else f"{value:.0f}"


def main():
    rounds, native, wine, windows = int(sys.argv[1]), sys.argv[2], sys.argv[3], sys.argv[4]
    here, there = times(native), times(wine, windows)
    for _ in range(rounds - 1):
        here, there = least(here, times(native)), least(there, times(wine, windows))
    if here.keys() != there.keys():
        raise SystemExit("the two benchmarks have other lines")
    print("| call | Linux | Windows' DLL | ratio | by hand, Linux | by hand, Windows |\n|---|---:|---:|---:|---:|---:|")
    for what, (ours, hand, unit) in here.items():
        theirs, their_hand, _ = there[what]
        print(f"| {what} | {shown(ours)} {unit} | {shown(theirs)} {unit} | {theirs / ours:.2f} | {shown(hand)} | {shown(their_hand)} |")


if __name__ == "__main__":
    main()
