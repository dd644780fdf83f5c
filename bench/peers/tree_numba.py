"""Peer for speed: the same tree solved by a Newton method compiled with Numba, every leg and node, cold start per state.

Two variants: "own" is what a good engineer writes (library logarithm, Colebrook solved to the last digits from the same guess each time,
one more step to see that nothing moves); "lent" borrows what our kernel found out (logarithm by a series, 1/sqrt(f) carried from step to
step, stopping on the size of the step). Both start from the lumped equation.

Same physics as the engine (isothermal legs with the kinetic term, Colebrook, leaks, filter, safety filter, relief valve, rotary
valve, lobe pump with slip and silencer). Written for speed with what the language offers: one compiled function for all states, flat
arrays, tree elimination in one sweep per step. No table and no folding: that is what is being compared.

With "-slowest" behind its name a variant reads the least velocity of all runs and hoses on open paths besides, each at its upstream end.

    tree_numba.py input.json rounds variant   ->  "ready", then for every line read one round: processor seconds for all states
    tree_numba.py input.json answers variant  ->  JSON: receiver pressure, flow to the filter, hose flows and least velocity of every state
"""
import json
import math
import sys
import time

import numpy as np
from numba import njit

PSI = 6894.757293168
LENT = len(sys.argv) < 4 or sys.argv[3].startswith("lent")
SLOWEST = len(sys.argv) > 3 and sys.argv[3].endswith("-slowest")


@njit(fastmath=True, error_model="numpy", inline="always")
def log_ratio(a, b):
    z = (a - b) / (a + b)
    if LENT and abs(z) < 0.06:
        y = z * z
        return 2 * z * (1 + y * (1 / 3 + y * (1 / 5 + y * (1 / 7 + y / 9))))
    return math.log(a / b)


@njit(fastmath=True, error_model="numpy")
def friction(re, wall, x):
    """f, d f/d Re and the new 1/sqrt(f), from the last one."""
    if re <= 2000:
        return 64 / re, -64 / (re * re), x
    two = 2 / math.log(10.0)
    viscous = 2.51 / re
    if not LENT:
        x = -two * math.log(wall + 7 * viscous)
    for _ in range(20):
        argument = wall + viscous * x
        step = (x + two * math.log(argument)) / (1 + two * viscous / argument)
        x -= step
        if abs(step) < (1e-5 if LENT else 1e-7):  # Newton's error here is 0.02 step**2
            break
    f = 1 / (x * x)
    weight = two * viscous / (wall + viscous * x)
    slope = -2 * f * weight / ((1 + weight) * re)
    if re < 4000:
        s = (re - 2000) / 2000
        share = s * s * (3 - 2 * s)
        laminar = 64 / re
        slope = (6 * s * (1 - s) / 2000) * (f - laminar) - (1 - share) * laminar / re + share * slope
        f = (1 - share) * laminar + share * f
    return f, slope, x


@njit(fastmath=True, error_model="numpy")
def pump(ps, pa, rt, displacement, standard, slip, speed, loss, at, w):
    """Mass flow of the lobe pump and its slope with inlet pressure; the silencer's loss follows the flow."""
    rho = ps / rt
    s = math.sqrt(rho * standard) * displacement * slip / math.sqrt(PSI)
    for _ in range(20):
        dp = pa + loss * (w / at) ** 2 - ps
        root = math.sqrt(max(dp, 1e-9))
        g = w - rho * displacement * speed + s * root
        dg = 1 + s / root * loss * w / (at * at)
        step = g / dg
        w -= step
        if abs(step) < 1e-14:
            break
    slope = (displacement * speed / rt - s * root / (2 * rho * rt) + s / (2 * root)) / dg
    return w, slope


@njit(fastmath=True, error_model="numpy")
def opening(area, pa, p, rt):
    """Isentropic nozzle from ambient and its slope with p."""
    r = p / pa
    if r >= 1:
        return 0.0, 0.0
    if r < 0.5282817877171742:
        r = 0.5282817877171742
    a = r ** (2 / 1.4)
    b = a * r ** (0.4 / 1.4)
    factor = area * pa * math.sqrt(2 * 1.4 / (0.4 * rt))
    root = math.sqrt(a - b)
    slope = 0.0
    if p / pa > 0.5282817877171742:
        slope = factor * (2 / 1.4 * a - 2.4 / 1.4 * b) / (r * pa * 2 * root)
    return factor * root, slope


@njit(fastmath=True, error_model="numpy")
def slowest(state, inlets, parent, inlet_node, P, w, hw, c, hc, pa, root_rt, seen):
    """Least velocity on the paths from the open inlets to the receiver; every run is looked at once."""
    least = 1e9
    for j in range(inlets.size):
        v = math.sqrt(hc[inlets[j]]) * root_rt * hw[j] / pa
        least = min(least, v)
        i = inlet_node[inlets[j]]
        while i > 2 and seen[i] != state:
            seen[i] = state
            v = math.sqrt(c[i]) * root_rt * abs(w[i]) / math.sqrt(P[i])
            least = min(least, v)
            i = parent[i]
    return least


@njit(fastmath=True, error_model="numpy")
def solve_all(states, parent, c, lod, k, reyn, wall, leak, inlet_node, hc, hlod, hk, hreyn, hwall, pa, rt, station, start, out):
    n = parent.size  # node 0 is the suction, 1 clean, 2 the receiver, then the tubing; parent[i] < i
    a2 = pa * pa
    P = np.empty(n)
    w = np.empty(n)
    xf = np.empty(n)
    inflow = np.empty(n)
    slope = np.empty(n)
    own = np.empty(n)
    per = np.empty(n)
    spare = np.empty(n)
    pers = np.empty(n)
    hose = np.full(n, -1)
    users = np.empty(n)
    total_steps = 0
    count = states.shape[1]
    hw = np.empty(count)
    hx = np.empty(count)
    hown = np.empty(count)
    hper = np.empty(count)
    seen = np.full(n, -1)
    root_rt = math.sqrt(rt)
    (filt, safety, rset, racc, rrated, rarea, rpockets, disp, dens, slip, speed, sloss, sat) = station
    q0 = start[0]
    for state in range(states.shape[0]):
        # ---- start: lumped flow per open inlet, leaks at the lumped vacuum, pressures marched up the tree
        for i in range(n):
            users[i] = leak[i] * start[1]
        for j in range(count):
            node = inlet_node[states[state, j]]
            hose[node] = j
            users[node] = q0
            hw[j] = q0
            hx[j] = 7.0
        for i in range(n - 1, 0, -1):
            users[parent[i]] += users[i]
        P[0] = start[2]
        P[1] = start[3]
        P[2] = start[4]
        w[1] = start[5]
        w[2] = start[5]
        for i in range(3, n):
            w[i] = users[i]
            xf[i] = 7.0
            kin = c[i] * w[i] * w[i]
            re = reyn[i] * w[i] + 1e-12
            f = 64 / re if re < 2000 else 0.02
            P[i] = min(P[parent[i]] + kin * (lod[i] * f + k[i]), 0.5 * (P[parent[i]] + a2))
        wp = start[5]
        # ---- Newton
        for iteration in range(60):
            for i in range(n):
                inflow[i] = 0.0
                slope[i] = 0.0
            for i in range(n - 1, -1, -1):
                p = P[i]
                # what hangs on the node
                if hose[i] >= 0:
                    j = hose[i]
                    m = states[state, j]
                    q = hw[j]
                    re = max(hreyn[m] * abs(q), 1e-9)
                    f, df, hx[j] = friction(re, hwall[m], hx[j])
                    kin = hc[m] * q * q
                    low = p
                    dlow = 1 - kin / p
                    if dlow < 0:
                        low = kin
                        dlow = 0.0
                    lg = log_ratio(a2, low)
                    res = a2 - low - kin * (f * hlod[m] + hk[m] + lg)
                    b = 2 * hc[m] * q * (f * hlod[m] + hk[m] + lg) + kin * hlod[m] * df * hreyn[m]
                    hown[j] = res / b
                    hper[j] = dlow / b
                    inflow[i] += q + hown[j]
                    slope[i] -= hper[j]
                elif leak[i] > 0:
                    root = math.sqrt(a2 - p) if p < a2 else 1e-3
                    inflow[i] += leak[i] * root
                    slope[i] -= leak[i] / (2 * root)
                if i == 0:
                    break
                if i > 2:
                    q = w[i]
                    lower = P[parent[i]]
                    size = abs(q)
                    re = max(reyn[i] * size, 1e-12)
                    kin = c[i] * q * size
                    lg = log_ratio(p, lower)
                    if re <= 2000:
                        loss = c[i] * (lod[i] * 64 / reyn[i] * q + k[i] * q * size)
                        b = c[i] * (lod[i] * 64 / reyn[i] + 2 * size * (k[i] + lg))
                    else:
                        f, df, xf[i] = friction(re, wall[i], xf[i])
                        loss = kin * (f * lod[i] + k[i])
                        b = 2 * c[i] * size * (f * lod[i] + k[i] + lg) + c[i] * size * size * lod[i] * df * reyn[i]
                    res = p - lower - loss - kin * lg
                    up = 1 - kin / p
                    dn = 1 - kin / lower
                elif i == 2:
                    if p < a2:
                        o, do = opening(rarea, pa, math.sqrt(p), rt)
                        inflow[i] += o + rpockets
                        slope[i] += do / (2 * math.sqrt(p))
                    q = w[i]
                    res = p - P[1] - filt * q
                    b = filt
                    up = 1.0
                    dn = 1.0
                else:
                    q = w[i]
                    res = p - P[0] - safety * q * q
                    b = 2 * safety * q
                    up = 1.0
                    dn = 1.0
                s = inflow[i] - q
                scale = 1 / (up - b * slope[i])
                o = (b * s - res) * scale
                y = dn * scale
                own[i] = o
                per[i] = y
                spare[i] = s
                pers[i] = slope[i]
                inflow[parent[i]] += q + s + slope[i] * o
                slope[parent[i]] += slope[i] * y
            # ---- suction: pump and relief valve
            ps = math.sqrt(P[0])
            wp, dwp = pump(ps, pa, rt, disp, dens, slip, speed, sloss, sat, wp)
            draw = wp
            ddraw = dwp
            v = pa - ps
            if v > rset + racc:
                r = rrated * math.sqrt(v / (rset + racc))
                draw -= r
                ddraw += r / (2 * v)
            elif v > rset:
                draw -= rrated * (v - rset) / racc
                ddraw += rrated / racc
            step = (draw - inflow[0]) / (slope[0] - ddraw / (2 * ps))
            own[0] = step
            worst = abs(step)
            for i in range(1, n):
                d = own[i] + per[i] * own[parent[i]]
                own[i] = d
                w[i] += spare[i] + pers[i] * d
                if abs(d) > worst:
                    worst = abs(d)
            for j in range(count):
                hw[j] += hown[j] - hper[j] * own[inlet_node[states[state, j]]]
            for i in range(n):
                t = P[i] + own[i]
                if t >= a2:
                    t = 0.5 * (P[i] + a2)
                elif t < 0.1 * P[i]:
                    t = 0.1 * P[i]
                P[i] = t
            total_steps += 1
            if worst < (4e-6 if LENT else 1e-11) * a2:
                break
        for j in range(count):
            hose[inlet_node[states[state, j]]] = -1
            out[state, 2 + j] = hw[j]
        out[state, 0] = math.sqrt(P[2])
        out[state, 1] = w[2]
        if SLOWEST:
            out[state, 2 + count] = slowest(state, states[state], parent, inlet_node, P, w, hw, c, hc, pa, root_rt, seen)
    return total_steps


class Tree:
    def __init__(self, data):
        self.pa = data["ambient_Pa"]
        self.rt = data["rt_JPerKg"]
        parent = np.array([0, 0, 1] + [q + 2 for q in data["parent"]])
        self.parent = parent

        def column(name):
            return np.array([1.0, 1.0, 1.0] + data[name])

        bore = column("bore_m")
        area = math.pi * bore**2 / 4
        self.c = self.rt / area**2
        self.lod = column("length_m") / bore
        self.k = column("k")
        self.reyn = 4 / (math.pi * bore * data["viscosity_PaS"])
        self.wall = column("roughness_m") / bore / 3.7
        self.inlet_node = np.array(data["inlet_node"]) + 2
        self.leak = np.zeros(parent.size)
        self.leak[self.inlet_node] = data["leak_kgPerSPa"]
        hb = np.array(data["hose_bore_m"])
        self.hc = self.rt / (math.pi * hb**2 / 4) ** 2
        self.hlod = np.array(data["hose_length_m"]) / hb
        self.hk = np.array(data["hose_k"])
        self.hreyn = 4 / (math.pi * hb * data["viscosity_PaS"])
        self.hwall = np.array(data["hose_roughness_m"]) / hb / 3.7
        self.station = (
            data["filter_Pa2SPerKg"],
            2 * self.pa * data["safety_loss_Pa"] / data["safety_at_kgPerS"] ** 2,
            data["relief_set_Pa"],
            data["relief_accumulation_Pa"],
            data["relief_rated_kgPerS"],
            data["rotary_area_m2"],
            data["rotary_pockets_kgPerS"],
            data["pump_displacement_m3"],
            data["pump_standard_kgPerM3"],
            data["pump_slip_perS"],
            data["pump_speed_perS"],
            data["silencer_loss_Pa"],
            data["silencer_at_kgPerS"],
        )
        self.states = np.array(data["states"])

    def lumped(self):
        """Flow per open inlet, driving force of leaks and station pressures if all hung on the receiver: done once."""
        count = self.states.shape[1]
        a2 = self.pa**2
        filt, safety = self.station[0], self.station[1]

        def at(ps):
            w, _ = pump(ps, self.pa, self.rt, *self.station[7:13], 0.1)
            v = self.pa - ps
            rset, racc, rated = self.station[2:5]
            if v > rset:
                w -= rated * (v - rset) / racc if v <= rset + racc else rated * math.sqrt(v / (rset + racc))
            clean = ps * ps + safety * w * w
            return w, clean, clean + filt * w

        low, high = 0.3 * self.pa, self.pa
        resistance = self.hc[0] * (self.hk[0] + self.hlod[0] * 0.027 + 0.4) * 1.3
        for _ in range(60):
            ps = (low + high) / 2
            w, clean, receiver = at(ps)
            drive = math.sqrt(max(a2 - receiver, 0.0))
            need = count * drive / math.sqrt(resistance) + self.leak.sum() * drive + self.station[6]
            if need > w:
                low = ps
            else:
                high = ps
        return np.array([drive / math.sqrt(resistance), drive, ps * ps, clean, receiver, w])

    def solve(self, states, out):
        return solve_all(
            states, self.parent, self.c, self.lod, self.k, self.reyn, self.wall, self.leak, self.inlet_node,
            self.hc, self.hlod, self.hk, self.hreyn, self.hwall, self.pa, self.rt, self.station, self.start, out,
        )


def main():
    with open(sys.argv[1]) as file:
        tree = Tree(json.load(file))
    tree.start = tree.lumped()
    out = np.empty((tree.states.shape[0], 3 + tree.states.shape[1]))
    tree.solve(tree.states, out)  # compiles
    if sys.argv[2] == "answers":
        print(json.dumps(out.tolist()))
        return
    print("ready", flush=True)
    for _ in range(int(sys.argv[2])):
        sys.stdin.readline()
        begin = time.process_time()
        tree.solve(tree.states, out)
        print(time.process_time() - begin, flush=True)


if __name__ == "__main__":
    main()
