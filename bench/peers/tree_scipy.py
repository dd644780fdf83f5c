"""Peer for speed: the same tree as an engineer would script it, one state at a time with NumPy and SciPy's sparse solver.

Same physics and unknowns as tree_numba.py: pressures squared and flows, Newton with the exact sparse Jacobian, vectorised over legs.

    tree_scipy.py input.json rounds   ->  "ready", then for every line read one round: processor seconds for 24 states
    tree_scipy.py input.json answers  ->  JSON: receiver pressure, flow to the filter and hose flows of the first 24 states
"""
import json
import math
import sys
import time

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

from tree_numba import PSI, Tree

STATES = 24


def colebrook(re, wall):
    x = np.full_like(re, 7.0)
    viscous = 2.51 / re
    two = 2 / math.log(10.0)
    for _ in range(6):
        argument = wall + viscous * x
        x -= (x + two * np.log(argument)) / (1 + two * viscous / argument)
    weight = two * viscous / (wall + viscous * x)
    f = 1 / x**2
    return f, -2 * f * weight / ((1 + weight) * re)


def friction_w2(w, reyn, wall):
    """f w|w| and its slope."""
    size = np.abs(w)
    re = np.maximum(reyn * size, 1e-9)
    laminar = 64 / re
    turbulent, slope = colebrook(np.maximum(re, 1000.0), wall)
    s = np.clip((re - 2000) / 2000, 0, 1)
    share = s * s * (3 - 2 * s)
    f = (1 - share) * laminar + share * turbulent
    df = 6 * s * (1 - s) / 2000 * (turbulent - laminar) - (1 - share) * laminar / re + share * slope
    return f * w * size, size * (2 * f + re * df)


def solve(tree, open_inlets):
    """One state: receiver pressure, flow to the filter, hose flows."""
    n = tree.parent.size
    a2 = tree.pa**2
    filt, safety, rset, racc, rated, area, pockets, disp, dens, slip, speed, loss, at = tree.station
    nodes = tree.inlet_node[open_inlets]
    legs = np.arange(3, n)
    first = np.concatenate([np.full(len(open_inlets), -1), legs])  # from node, -1 is still air
    last = np.concatenate([nodes, tree.parent[3:]])
    c = np.concatenate([tree.hc[open_inlets], tree.c[3:]])
    lod = np.concatenate([tree.hlod[open_inlets], tree.lod[3:]])
    k = np.concatenate([tree.hk[open_inlets], tree.k[3:]])
    reyn = np.concatenate([tree.hreyn[open_inlets], tree.reyn[3:]])
    wall = np.concatenate([tree.hwall[open_inlets], tree.wall[3:]])
    leak = tree.leak.copy()
    leak[nodes] = 0
    m = first.size
    inside = first >= 0
    P = np.full(n, 0.7 * a2)
    w = np.full(m, tree.start[0])
    flow = np.array([tree.start[5], tree.start[5]])  # safety filter, filter
    wp = tree.start[5]
    P[:3] = tree.start[2:5]
    for step in range(60):
        up = np.where(inside, P[first], a2)
        low = P[last]
        kin = c * w * np.abs(w)
        fw2, dfw2 = friction_w2(w, reyn, wall)
        ln = np.log(up / low)
        law = up - low - c * lod * fw2 - kin * (k + ln)
        by_up = 1 - kin / up
        by_low = -(1 - kin / low)
        by_w = -c * (lod * dfw2 + 2 * np.abs(w) * (k + ln))
        line = np.array([P[1] - P[0] - safety * flow[0] ** 2, P[2] - P[1] - filt * flow[1]])
        root = np.sqrt(np.maximum(a2 - P, 1e-6))
        balance = leak * root
        slope = -leak / (2 * root)
        np.add.at(balance, last, w)
        np.subtract.at(balance, first[inside], w[inside])
        p2 = math.sqrt(P[2])
        r = max(p2 / tree.pa, 0.5282817877171742)
        factor = area * tree.pa * math.sqrt(7 / tree.rt)
        a, b = r ** (2 / 1.4), r ** (2.4 / 1.4)
        nozzle = factor * math.sqrt(a - b)
        balance[2] += nozzle + pockets - flow[1]
        slope[2] += factor * (2 / 1.4 * a - 2.4 / 1.4 * b) / (r * tree.pa * 2 * math.sqrt(a - b)) / (2 * p2)
        balance[1] += flow[1] - flow[0]
        ps = math.sqrt(P[0])
        rho = ps / tree.rt
        s = math.sqrt(rho * dens) * disp * slip / math.sqrt(PSI)
        for _ in range(30):
            dp = math.sqrt(tree.pa + loss * (wp / at) ** 2 - ps)
            dg = 1 + s / dp * loss * wp / at**2
            change = (wp - rho * disp * speed + s * dp) / dg
            wp -= change
            if abs(change) < 1e-14:
                break
        relief, drelief = 0.0, 0.0
        v = tree.pa - ps
        if v > rset + racc:
            relief = rated * math.sqrt(v / (rset + racc))
            drelief = relief / (2 * v)
        elif v > rset:
            relief, drelief = rated * (v - rset) / racc, rated / racc
        dwp = (disp * speed / tree.rt - s * dp / (2 * rho * tree.rt) + s / (2 * dp)) / dg
        balance[0] += flow[0] + relief - wp
        slope[0] -= (drelief + dwp) / (2 * ps)
        # unknowns: pressures, leg flows, safety filter, filter
        i = np.arange(m)
        rows = np.concatenate([i[inside], i, i, last, first[inside], np.arange(n) + m])
        cols = np.concatenate([first[inside], last, n + i, n + i, (n + i)[inside], np.arange(n)])
        ones = np.ones(m)
        vals = np.concatenate([by_up[inside], by_low, by_w, ones, -ones[inside], slope])
        rows[2 * m + inside.sum() : 3 * m + 2 * inside.sum()] += m
        extra_rows = [n + m, n + m, n + m, n + m + 1, n + m + 1, n + m + 1, m, m + 1, m + 1, m + 2]
        extra_cols = [1, 0, n + m, 2, 1, n + m + 1, n + m, n + m, n + m + 1, n + m + 1]
        extra_vals = [1, -1, -2 * safety * flow[0], 1, -1, -filt, 1, -1, 1, -1]
        matrix = coo_matrix(
            (np.concatenate([vals, extra_vals]), (np.concatenate([rows, extra_rows]), np.concatenate([cols, extra_cols]))),
            shape=(n + m + 2, n + m + 2),
        ).tocsc()
        change = spsolve(matrix, -np.concatenate([law, balance, line]))
        trial = P + change[:n]
        trial = np.where(trial >= a2, 0.5 * (P + a2), np.maximum(trial, 0.1 * P))
        small = np.abs(change[:n]).max() < 4e-6 * a2
        P = trial
        w = w + change[n : n + m]
        flow = flow + change[n + m :]
        if small:
            break
    return [math.sqrt(P[2]), flow[1], *w[: len(open_inlets)]]


def main():
    with open(sys.argv[1]) as file:
        tree = Tree(json.load(file))
    tree.start = tree.lumped()
    states = tree.states[:STATES]
    if sys.argv[2] == "answers":
        print(json.dumps([solve(tree, state) for state in states]))
        return
    solve(tree, states[0])
    print("ready", flush=True)
    for _ in range(int(sys.argv[2])):
        sys.stdin.readline()
        begin = time.process_time()
        for state in states:
            solve(tree, state)
        print(time.process_time() - begin, flush=True)


if __name__ == "__main__":
    main()
