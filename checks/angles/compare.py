#!/usr/bin/env python3
"""Joint angles against SciPy: the same rotations, and the branch of the standard.

    compare.py MENDARC               at least a thousand random rotations and the hard ones
    compare.py MENDARC --self-test   the same, then with one value broken at a time: it has to notice
    compare.py MENDARC --time        a million matrices through both, and how long each takes
    compare.py --fixture             write crates/body/tests/scipy.csv

Needs numpy and scipy (checks/requirements.txt). SciPy returns Y-X-Y with the second angle positive; the standard wants it
negative, which is the other branch: (a, b, c) becomes (a -/+ 180, -b, c -/+ 180). Elevation is printed as the positive b.
"""

import json
import pathlib
import subprocess
import sys
import tempfile
import time
import warnings

import numpy as np
from scipy.spatial.transform import Rotation

HEADER = "r11,r12,r13,r21,r22,r23,r31,r32,r33"
RANDOM = 1200
SINGULAR = 1e-3  # below this sine of the elevation only the sum has a value
ROOT = pathlib.Path(__file__).resolve().parents[2]


def random_quaternions(count, seed=20051):
    """Whole-number quaternions (w, x, y, z), evenly over all rotations: they can be written down exactly."""
    numbers = np.random.default_rng(seed)
    found = []
    while len(found) < count:
        q = numbers.integers(-99, 100, 4)
        if 20**2 < q @ q <= 99**2:
            found.append(q)
    return np.array(found)


def hard_quaternions():
    """The arm at the side, straight up, and ever nearer to both; half turns; single axes."""
    hard = []
    for w, y in [(1, 0), (7, 3), (7, -3), (3, 7), (0, 1)]:
        hard.append((w, 0, y, 0))  # at the side, turned
        hard.append((0, w, 0, y))  # straight up
        for near in (10, 1000, 100_000, 10_000_000):
            hard.append((w * near, 1, y * near, 2))
            hard.append((1, w * near, 2, y * near))
    for angle in (1, 2, 5):
        hard += [(angle, 1, 0, 0), (angle, -1, 0, 0), (angle, 0, 0, 1), (angle, 0, 0, -1), (angle, 0, 1, 0)]
    return np.array([q for q in hard if any(q)])


def standard(rotations):
    """Plane, elevation, axial rotation by SciPy and the rule of the branch; the sum from the twist, by itself."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it warns where the angles are singular; those rows are looked at by their sum
        a, b, c = rotations.as_euler("YXY", degrees=True).T
    quaternion = rotations.as_quat()
    total = 2 * np.degrees(np.arctan2(quaternion[:, 1], quaternion[:, 3]))
    return wrapped(a + 180), b, wrapped(c + 180), wrapped(total)


def wrapped(degrees):
    return -((-np.asarray(degrees) + 180) % 360 - 180)


def off(one, other):
    return np.abs(wrapped(np.asarray(one) - np.asarray(other)))


def angles(mendarc, matrices, side="right"):
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder, "matrices.csv")
        with path.open("w", encoding="utf-8") as file:
            file.write(HEADER + "\n")
            np.savetxt(file, matrices.reshape(-1, 9), fmt="%.17g", delimiter=",")
        run = subprocess.run([mendarc, "angles", path, "--side", side, "--json"], capture_output=True, check=False)
    if run.returncode != 0:
        raise SystemExit(f"angles ended with {run.returncode}: {run.stderr.decode()[:2000]}")
    return json.loads(run.stdout)


def column(rows, key):
    return np.array([np.nan if row[key] is None else row[key] for row in rows])


def faults(rows, rotations):
    """What is not as SciPy has it."""
    found = []
    plane, elevation, axial, total = standard(rotations)
    sine = np.sin(np.radians(elevation))
    defined = np.array([row["defined"] for row in rows])
    got = {key: column(rows, key) for key in
           ("plane_of_elevation_deg", "elevation_deg", "axial_rotation_deg", "y_sum_deg", "noise_gain")}
    clear = np.abs(sine / SINGULAR - 1) > 1e-6
    if (bad := np.flatnonzero(clear & (defined != (sine >= SINGULAR)))).size:
        found.append(f"`defined` in row {bad[0]}")
    for key in ("plane_of_elevation_deg", "axial_rotation_deg", "noise_gain"):
        if (bad := np.flatnonzero(np.isnan(got[key]) == defined)).size:
            found.append(f"`{key}` and `defined` contradict each other in row {bad[0]}")
    for key in ("elevation_deg", "y_sum_deg"):
        if np.isnan(got[key]).any():
            found.append(f"`{key}` is missing")
    # Noise of the last written place grows near the singular places as the document says it does.
    room = 1e-8 * np.where(defined, got["noise_gain"], 1)
    for key, expected in (("plane_of_elevation_deg", plane), ("axial_rotation_deg", axial)):
        if (bad := np.flatnonzero(defined & ~(off(got[key], expected) <= room))).size:
            found.append(f"`{key}` in row {bad[0]}: {got[key][bad[0]]} and by SciPy {expected[bad[0]]}")
    if (bad := np.flatnonzero(~(off(got["elevation_deg"], elevation) <= 1e-6))).size:
        found.append(f"`elevation_deg` in row {bad[0]}")
    # Straight up there is no sum to compare with.
    has_sum = elevation < 179.9
    if (bad := np.flatnonzero(has_sum & ~(off(got["y_sum_deg"], total) <= 1e-5))).size:
        found.append(f"`y_sum_deg` in row {bad[0]}: {got['y_sum_deg'][bad[0]]} and by SciPy {total[bad[0]]}")
    for key, low, high in (("plane_of_elevation_deg", -180, 180), ("axial_rotation_deg", -180, 180),
                           ("y_sum_deg", -180, 180), ("elevation_deg", 0 - 1e-12, 180)):
        value = got[key][~np.isnan(got[key])]
        if not ((value > low) & (value <= high)).all():
            found.append(f"`{key}` is beyond its range")
    triples = np.stack([got["plane_of_elevation_deg"], -got["elevation_deg"], got["axial_rotation_deg"]], axis=1)
    whole = defined & ~np.isnan(triples).any(axis=1)
    rebuilt = Rotation.from_euler("YXY", triples[whole], degrees=True)
    apart = np.degrees((rebuilt * rotations[whole].inv()).magnitude())
    if not (apart <= 1e-6).all():
        found.append(f"a rotation rebuilt from its angles is {apart.max()} degrees off")
    return found


def compare(mendarc, self_test):
    quaternions = np.vstack([random_quaternions(RANDOM), hard_quaternions()])
    rotations = Rotation.from_quat(quaternions[:, [1, 2, 3, 0]])
    matrices = rotations.as_matrix()
    rows = angles(mendarc, matrices)["rows"]
    found = faults(rows, rotations)
    # A left arm's raw data are the mirror image, and the same numbers have to come of them.
    mirror = np.diag([1.0, 1.0, -1.0])
    left = angles(mendarc, mirror @ matrices @ mirror, "left")["rows"]
    if [row["clinical"] for row in left] != [row["clinical"] for row in rows]:
        found.append("a mirrored left arm has other clinical numbers")
    undefined = sum(not row["defined"] for row in rows)
    print(f"angles: {len(rows)} rotations against SciPy, {undefined} of them at the side or straight up")
    for fault in found:
        print(f"FAULT [angles] {fault}")
    if self_test:
        found += unnoticed(rows, rotations)
    return 1 if found else 0


def unnoticed(rows, rotations):
    """Breaks one value at a time; gives those that nothing was said about."""
    missed = []
    some = next(at for at, row in enumerate(rows) if row["defined"] and 20 < row["elevation_deg"] < 160)
    broken = {
        "the other branch": lambda row: row.update(
            plane_of_elevation_deg=float(wrapped(row["plane_of_elevation_deg"] + 180)),
            axial_rotation_deg=float(wrapped(row["axial_rotation_deg"] + 180)), elevation_deg=-row["elevation_deg"]),
        "half a turn of the plane": lambda row: row.update(
            plane_of_elevation_deg=float(wrapped(row["plane_of_elevation_deg"] + 180))),
        "the sign of the sum": lambda row: row.update(y_sum_deg=-row["y_sum_deg"]),
        "a millionth of an elevation": lambda row: row.update(elevation_deg=row["elevation_deg"] + 2e-6),
        "a plane that is null": lambda row: row.update(plane_of_elevation_deg=None),
        "`defined`": lambda row: row.update(defined=False),
    }
    for name, change in broken.items():
        copy = json.loads(json.dumps(rows))
        change(copy[some])
        if not faults(copy, rotations):
            missed.append(name)
            print(f"FAULT [angles] nothing was said when {name} was broken")
    return missed


def timed(mendarc, count=1_000_000):
    matrices = Rotation.random(count, random_state=np.random.default_rng(1)).as_matrix()
    rotations = Rotation.from_matrix(matrices)
    start = time.perf_counter()
    rotations.as_euler("YXY")
    conversion = time.perf_counter() - start
    start = time.perf_counter()
    Rotation.from_matrix(matrices).as_euler("YXY")
    both = time.perf_counter() - start
    print(f"SciPy, one core: as_euler {count / conversion / 1e6:.2f} million a second; "
          f"from_matrix, which looks at the matrix, and as_euler {count / both / 1e6:.2f}")
    with tempfile.TemporaryDirectory() as folder:
        for decimals in ("%.6f", "%.17g"):
            path = pathlib.Path(folder, "matrices.csv")
            with path.open("w", encoding="utf-8") as file:
                file.write(HEADER + "\n")
                np.savetxt(file, matrices.reshape(-1, 9), fmt=decimals, delimiter=",")
            for shape in ([], ["--json"]):
                best = min(once(mendarc, path, shape) for _ in range(3))
                print(f"mendarc angles {' '.join(shape):6} {decimals:5}: {count / best / 1e6:.2f} million rows a second")
    print("the library alone, one core, with the check of the frame: cargo bench -p body")


def once(mendarc, path, shape):
    start = time.perf_counter()
    subprocess.run([mendarc, "angles", path, "--side", "right", *shape], stdout=subprocess.DEVNULL, check=True)
    return time.perf_counter() - start


def fixture():
    quaternions = np.vstack([random_quaternions(RANDOM), hard_quaternions()])
    rotations = Rotation.from_quat(quaternions[:, [1, 2, 3, 0]])
    plane, elevation, axial, total = standard(rotations)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        forward, right, humerus = rotations.as_euler("XZY", degrees=True).T
    undefined = np.sin(np.radians(elevation)) < SINGULAR
    lines = [
        "# Written by checks/angles/compare.py --fixture with SciPy's Rotation: as_euler('YXY') in the standard's branch,",
        "# the sum from the twist of the quaternion about Y, as_euler('XZY'). Whole-number quaternions, degrees; empty where",
        "# there is no value.",
        "w,x,y,z,plane,elevation,axial,sum,xzy_forward,xzy_right,xzy_humerus",
    ]
    for at, quaternion in enumerate(quaternions):
        cells = [str(number) for number in quaternion]
        singular = np.cos(np.radians(right[at])) < SINGULAR
        values = [(plane, undefined[at]), (elevation, False), (axial, undefined[at]), (total, elevation[at] > 179.9),
                  (forward, singular), (right, False), (humerus, singular)]
        cells += ["" if left_out else f"{value[at]:.10f}" for value, left_out in values]
        lines.append(",".join(cells))
    (ROOT / "crates/body/tests/scipy.csv").write_text("\n".join(lines) + "\n", encoding="utf-8")


def main(arguments):
    if arguments == ["--fixture"]:
        return fixture()
    if not arguments or arguments[1:] not in ([], ["--self-test"], ["--time"]):
        raise SystemExit(__doc__)
    mendarc = arguments[0]
    if "--time" in arguments:
        return timed(mendarc)
    return compare(mendarc, "--self-test" in arguments)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
