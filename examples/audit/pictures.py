"""One picture a pump, and all of them on one page. Drawn without a screen."""
import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt  # noqa: E402  after the choice of the drawing engine
import numpy as np  # noqa: E402

import cutwater as cw  # noqa: E402

from .tables import worst_check  # noqa: E402

PUMP, WATER, SYSTEM, DUTY, INK, NPSH = "#1f4e5f", "#9db4ba", "#b3652a", "#8f2413", "#22302e", "#6a4a7c"
PREFERRED, ALLOWABLE = "#dcebdd", "#f6efd6"
VERDICT = {"meets": "#22302e", "WATCH": "#123a5c", "FAILS": "#4a1942", "refused": "#4a1942"}
POINTS = 160


def _known(c, key, i):
    return i not in c.why.get(key, ())


def _regions(axes, c, i):
    """The allowable region with the preferred one in it, which reaches no further."""
    if not _known(c, "region", i):
        return
    low, high = c.found["maker_flow"][i], c.found["greatest_read"][i]
    axes.axvspan(low, high, color=ALLOWABLE, lw=0, label="allowable region")
    axes.axvspan(
        max(low, c.found["least_preferred"][i]),
        min(high, c.found["greatest_preferred"][i]),
        color=PREFERRED,
        lw=0,
        label="preferred region",
    )


def _heads(axes, c, i):
    pump, used = c.pumps[i], c.used[i]
    _regions(axes, c, i)
    if _known(c, "used_heads", i):
        at, heads = used["heads"]
        flows = np.linspace(at[0], at[-1], POINTS)
        if pump.get("correct_for") in ("viscosity", "solids"):
            on_water = np.linspace(used["water"][0][0], used["water"][0][-1], POINTS)
            axes.plot(on_water, cw.curve_head(*used["water"], on_water), color=WATER, lw=1.2, label="pump on water")
        axes.plot(flows, cw.curve_head(at, heads, flows), color=PUMP, lw=2, label="pump on the liquid")
        axes.plot(at, heads, ".", color=PUMP, ms=4)
        if _known(c, "used_system", i):
            axes.plot(
                flows, cw.curve_head(used["all_flows"], used["system"], flows), color=SYSTEM, lw=2, label="system"
            )
    if _known(c, "system_head", i):
        axes.plot(c.found["wanted"][i], c.found["system_head"][i], "x", color=INK, ms=7, mew=1.6, label="flow wanted")
    if _known(c, "duty_head", i):
        axes.plot(c.found["duty_flow"][i], c.found["duty_head"][i], "o", color=DUTY, ms=7, label="duty")
    axes.set_xlim(left=0)
    _from_zero(
        axes, 1.4 * used["heads"][1].max() if _known(c, "used_heads", i) else np.inf
    )  # a steep system's curve must not flatten the pump's


def _from_zero(axes, most=np.inf):
    axes.set_ylim(0, min(1.05 * axes.get_ylim()[1], most))


def _suction(axes, c, i):
    pump, used = c.pumps[i], c.used[i]
    _regions(axes, c, i)
    if _known(c, "used_npsh3s", i):
        at, npsh3s = used["npsh3s"]
        flows = np.linspace(at[0], at[-1], POINTS)
        axes.plot(flows, cw.curve_npsh3(at, npsh3s, flows), color=NPSH, lw=2, label="NPSH3")
        if _known(c, "npsh_available", i):
            losses = cw.system_head(0, c.found["suction_resistance"][i], flows)
            offered = cw.npsh_available(
                *(c.found[key][i] for key in ("surface_absolute", "vapour_used", "density_used")),
                pump["liquid_level"],
                losses,
            )
            axes.plot(flows, offered, color=SYSTEM, lw=2, label="NPSH available")
    if _known(c, "npsh3", i):
        axes.plot(c.found["duty_flow"][i], c.found["npsh3"][i], "o", color=DUTY, ms=6)
    _from_zero(axes)


def _power(axes, c, i):
    used = c.used[i]
    _regions(axes, c, i)
    if _known(c, "used_powers", i):
        axes.plot(*used["powers"], "-o", color=PUMP, lw=1.6, ms=3, label="power input")
    if _known(c, "motor_fitted", i):
        axes.axhline(c.found["motor_fitted"][i], color=INK, lw=1.2, ls="--", label="motor fitted")
    if _known(c, "power_input", i):
        axes.plot(c.found["duty_flow"][i], c.found["power_input"][i], "o", color=DUTY, ms=6)
    _from_zero(axes)


def _title(figure, c, i):
    pump, (word, _) = c.pumps[i], c.worst[i]
    figure.text(0.075, 0.962, f"{pump['tag']}  {pump['service']}", fontsize=13, weight="bold", color=INK)
    figure.text(0.075, 0.936, f"{pump['liquid']}; {pump['pump'].lower()}", fontsize=9, color="#5d6e6a")
    told = word if word == "meets" else f"{word}: {worst_check(c, i)}"
    figure.text(0.97, 0.962, told, fontsize=10.5, weight="bold", ha="right", color=VERDICT[word])


def _one(c, i, path):
    figure = plt.figure(figsize=(8.2, 8.4))
    grid = figure.add_gridspec(
        3, 1, height_ratios=(2.2, 1, 1), left=0.095, right=0.97, top=0.915, bottom=0.065, hspace=0.12
    )
    top = figure.add_subplot(grid[0])
    parts = [top, figure.add_subplot(grid[1], sharex=top), figure.add_subplot(grid[2], sharex=top)]
    for axes, drawing, label in zip(parts, (_heads, _suction, _power), ("Head, m", "NPSH, m", "Power input, kW")):
        drawing(axes, c, i)
        axes.set_ylabel(label)
        axes.grid(color="#dfe6e4", lw=0.6)
        axes.set_axisbelow(True)
        handles, labels = axes.get_legend_handles_labels()
        skip = 0 if axes is top else sum("region" in label for label in labels)  # the regions are told once
        if len(handles) > skip:
            axes.legend(
                handles[skip:], labels[skip:], fontsize=7.5, loc="best", framealpha=0.9, ncol=2 if axes is top else 1
            )
        axes.tick_params(labelbottom=axes is parts[-1])
    parts[-1].set_xlabel("Flow, m³/h")
    _title(figure, c, i)
    figure.savefig(path, dpi=110)
    plt.close(figure)


def _overview(plant, c, path):
    columns = 3
    rows = -(-len(c.pumps) // columns)
    figure, table = plt.subplots(rows, columns, figsize=(12.5, 3.15 * rows + 1.1), squeeze=False)
    for axes in table.flat[len(c.pumps) :]:
        axes.set_visible(False)
    for axes, i in zip(table.flat, c.order):
        _heads(axes, c, i)
        word = c.worst[i][0]
        axes.set_title(
            f"{c.pumps[i]['tag']}  {c.pumps[i]['service']}", fontsize=9.5, loc="left", weight="bold", color=INK, pad=17
        )
        axes.text(
            0,
            1.025,
            word if word == "meets" else f"{word}: {worst_check(c, i)}",
            transform=axes.transAxes,
            fontsize=8.5,
            color=VERDICT[word],
        )
        axes.tick_params(labelsize=7.5)
        axes.grid(color="#dfe6e4", lw=0.5)
        axes.set_axisbelow(True)
    for axes in table[-1]:
        axes.set_xlabel("Flow, m³/h", fontsize=8.5)
    for axes in table[:, 0]:
        axes.set_ylabel("Head, m", fontsize=8.5)
    keys = {}
    for axes in table.flat:
        keys.update((label, handle) for handle, label in zip(*axes.get_legend_handles_labels()))
    high = figure.get_figheight()
    figure.legend(keys.values(), keys.keys(), loc="lower center", ncol=len(keys) or 1, fontsize=8.5, frameon=False)
    figure.suptitle(
        f"{plant['works']}, {plant['unit']}: pumps and their systems, gravest first",
        x=0.06,
        y=1 - 0.22 / high,
        ha="left",
        fontsize=13,
        weight="bold",
        color=INK,
    )
    figure.subplots_adjust(left=0.06, right=0.985, top=1 - 0.95 / high, bottom=0.85 / high, hspace=0.48, wspace=0.16)
    figure.savefig(path, dpi=110)
    plt.close(figure)


def draw(plant, c, folder):
    folder.mkdir(parents=True, exist_ok=True)
    made = [folder / "overview.png"]
    _overview(plant, c, made[0])
    for i, pump in enumerate(c.pumps):
        name = "".join(letter if letter.isalnum() or letter in "-_" else "_" for letter in pump["tag"])
        made.append(folder / f"{name}.png")
        _one(c, i, made[-1])
    return made
