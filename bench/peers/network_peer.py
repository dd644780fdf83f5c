"""An independent solution of whole networks, and of single legs by python3-fluids.

Reads one JSON object from standard input and writes one to standard output:
    {"networks": [...], "legs": [...]}   ->   {"networks": [{"pressures", "flows", "dust", "misfit"}], "legs": [{"flow", "choke_pressure"}]}

Everything is SI. A network is primary data (bores, lengths, roughness, K, nozzle areas, pump data), not coefficients, and the equations are
written here once more from the equation pages, with pressures and flows as unknowns, junction losses inside the equations, and a general root finder
of SciPy in place of the network's own method. Ends with status 3 where SciPy or fluids is not installed.
"""
import json
import math
import sys

try:
    import numpy as np
    from fluids.compressible import P_isothermal_critical_flow, isothermal_gas
    from scipy.optimize import brentq, least_squares, root
except ImportError:
    sys.exit(3)

GAMMA = 1.4
PSI = 6894.757293168
RHO_SLIP = 1.2041  # the air on which slip is stated, a stated figure


def colebrook(re, rr):
    """f from x = 1/sqrt(f) by bracketing."""
    x = brentq(lambda x: x + 2 * math.log10(rr / 3.7 + 2.51 * x / re), 0.1, 60, xtol=1e-14, rtol=1e-14)
    return 1 / x ** 2


def darcy(re, rr):
    if re <= 2000:
        return 64 / re
    if re >= 4000:
        return colebrook(re, rr)
    x = (re - 2000) / 2000
    s = x * x * (3 - 2 * x)
    return (1 - s) * 64 / re + s * colebrook(re, rr)


def nozzle(area, p0, p, rt):
    """Isentropic, odd about p = p0."""
    high, low, sign = (p0, p, 1) if p <= p0 else (p, p0, -1)
    r = max(low / high, (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1)))
    flux = 2 * GAMMA / (GAMMA - 1) * (r ** (2 / GAMMA) - r ** ((GAMMA + 1) / GAMMA))
    return sign * area * high * math.sqrt(max(flux, 0) / rt)


CRANE_F = ((30, 1.74), (45, 1.41), (60, 1.00), (90, 0.0))


def wye_k(degrees, a, q):
    """K of branch and run on the common velocity (Crane TP-410), linear between the tabulated angles."""
    def at(f, right_angle):
        c = 1 if a <= 0.35 else 0.9 * (1 - q) if q <= 0.4 else 0.55 if q >= 0.42 else 0.54 + 0.5 * (q - 0.4)
        branch = c * (1 + (q / a) ** 2 - 2 * (1 - q) ** 2 - f * q * q / a)
        run = 1.55 * q - q * q if right_angle else 1 - (1 - q) ** 2 - f * q * q / a
        return branch, run
    for (low, f_low), (high, f_high) in zip(CRANE_F, CRANE_F[1:]):
        if degrees <= high + 1e-9:
            t = (degrees - low) / (high - low)
            one, two = at(f_low, low == 90), at(f_high, high == 90)
            return tuple((1 - t) * x + t * y for x, y in zip(one, two))
    raise ValueError(degrees)


G = 9.80665


def barati(re):
    t = math.tanh
    return (5.4856e9 * t(4.3774e-9 / re) + 0.0709 * t(700.6574 / re) + 0.3894 * t(74.1539 / re) - 0.1198 * t(7429.0843 / re)
            + 1.7174 * t(9.9851 / (re + 2.3384)) + 0.4744)


def drag(re):
    """Stokes below 0.01, Barati from 0.1, a straight line between."""
    if re < 0.01:
        return 24 / re
    if re >= 0.1:
        return barati(re)
    part = (re - 0.01) / 0.09
    return 24 / re * (1 - part) + barati(re) * part


def falling(size, heavy, rho, mu):
    """Terminal velocity of a sphere, by bracketing."""
    weight = 4 / 3 * size * (heavy - rho) * G / rho
    return brentq(lambda v: drag(rho * v * size / mu) * v * v - weight, 1e-9, 1e3, xtol=1e-16, rtol=1e-14)


class Dust:
    def __init__(self, data, site_rho, mu):
        self.size, self.heavy, self.hinkle, self.mu = data["size"], data["density"], data["hinkle"], mu
        self.site = site_rho
        self.at_site = falling(self.size, self.heavy, site_rho, mu)
        self.power = math.log(self.at_site / falling(self.size, self.heavy, site_rho / 2, mu)) / math.log(2)
        self.lag = 0.0638 * self.size ** 0.3 * self.heavy ** 0.5

    def drop(self, leg, rho, v, flux, flux_of_all):
        """What this dust adds on the dilute branch [Pa]: start in a hose, friction, lift; measured runs have no bends."""
        c = v * (1 - self.lag)
        rise = leg.get("rise", 0) * (1 if leg["forward"] else -1)
        level = leg["length"] - abs(rise)
        bore = leg["bore"]
        total = flux * c if "valve" in leg else 0
        if self.hinkle:
            slip = v * self.lag
            re = rho * slip * self.size / self.mu
            cd = max(24 / re, 18.5 * re ** -0.6, 0.44)
            f = 3 / 8 * rho / self.heavy * bore / self.size * cd * (slip / c) ** 2
        else:
            share = flux_of_all / (self.heavy * c)
            f = 0.117 / 4 * share * (share * v / math.sqrt(G * bore)) ** -1.15
        total += 2 * f * flux * c * level / bore
        total += 0.057 * flux * abs(rise) * math.sqrt(G / bore)
        if rise > 0:
            total += flux * G * rise / (v - self.at_site * (rho / self.site) ** self.power)
        return total * min(1, v)


class Network:
    def __init__(self, data):
        self.d = data
        air = data["air"]
        self.pa, self.rt, self.mu = air["ambient"], air["rt"], air["viscosity"]
        self.held = {"air": self.pa, **data["held"]}
        names = {n for leg in data["legs"] for n in (leg["from"], leg["to"])}
        names |= {leak["node"] for leak in data["leaks"]} | {z["node"] for z in data["nozzles"]}
        for s in data["stations"]:
            names |= {s["receiver"], s["clean"], s["suction"]}
        self.free = sorted(names - set(self.held))
        self.flow_names = ["leg " + leg["id"] for leg in data["legs"]]
        self.flow_names += ["filter " + s["receiver"] for s in data["stations"]]
        self.flow_names += ["safety " + s["receiver"] for s in data["stations"] if s["suction"] != s["clean"]]
        self.pumps = [(s, p) for s in data["stations"] for p in s["producers"]]
        self.flow_names += ["pump " + p["id"] for _, p in self.pumps]
        self.scale = 0.1
        self.dusts = {k: Dust(x, self.pa / self.rt, self.mu) for k, x in data["dusts"].items()}
        for leg in data["legs"]:
            if leg["id"].startswith("hose "):
                leg["valve"] = leg["to"]

    def unpack(self, v):
        n = len(self.free)
        p = dict(self.held)
        p.update({k: self.pa * math.sqrt(max(x, 1e-8)) for k, x in zip(self.free, v[:n])})
        m = n + len(self.flow_names)
        return p, dict(zip(self.flow_names, v[n:m] * self.scale)), v[m:]

    def start(self, seed):
        random = np.random.default_rng(seed)
        level = 0.8 if self.d["stations"] else 0.9
        flows = []
        for leg in self.d["legs"]:
            flows.append(18 * math.pi / 4 * leg["bore"] ** 2 / self.scale)
        flows += [0.1 / self.scale] * (len(self.flow_names) - len(flows))
        v = np.concatenate([np.full(len(self.free), level), flows, np.full(len(self.pumps), 1.0)])
        return v * (1 + 0.3 * random.standard_normal(len(v)) if seed else 1)

    def junctions(self, w):
        """Loss in pressure squared at the downstream end of joining legs."""
        loss = {}
        busy = set(self.held) | set(self.d["supplies"]) | {l["node"] for l in self.d["leaks"]}
        busy |= {z["node"] for z in self.d["nozzles"]} | {s["receiver"] for s in self.d["stations"]}
        for node in set(self.free) - busy:
            into = [l for l in self.d["legs"] if l["to"] == node]
            out = [l for l in self.d["legs"] if l["from"] == node]
            wyes = [l for l in into if l.get("wye_degrees")]
            if len(into) != 2 or len(out) != 1 or len(wyes) != 1:
                continue
            branch, common = wyes[0], out[0]
            run = next(l for l in into if l is not branch)
            if min(w["leg " + l["id"]] for l in (branch, run, common)) <= 0:
                continue
            area = lambda l: math.pi / 4 * l["bore"] ** 2
            head = lambda l: w["leg " + l["id"]] ** 2 * self.rt / area(l) ** 2
            q = min(1, w["leg " + branch["id"]] / w["leg " + common["id"]])
            k_branch, k_run = wye_k(branch["wye_degrees"], area(branch) / area(common), q)
            lesser = min(w["leg " + branch["id"]], w["leg " + run["id"]]) / w["leg " + common["id"]]
            faded = min(1, lesser / 1e-3)
            loss[branch["id"]] = faded * (k_branch * head(common) + max(0, head(common) - head(branch)))
            loss[run["id"]] = faded * (k_run * head(common) + max(0, head(common) - head(run)))
        return loss

    def dust_flows(self, w):
        """Dust of every kind in every leg: what enters a point leaves it in the ratio of the air, by one linear system per dust."""
        legs = self.d["legs"]
        receivers = {s["receiver"] for s in self.d["stations"]}
        names = sorted({n for leg in legs for n in (leg["from"], leg["to"])} - set(self.held) - receivers)
        row = {n: i for i, n in enumerate(names)}
        flows = {leg["id"]: {} for leg in legs}
        for kind in self.dusts:
            matrix, fed = np.eye(len(names)), np.zeros(len(names))
            leaving = np.zeros(len(names))
            for leg in legs:
                up = leg["from"] if w["leg " + leg["id"]] >= 0 else leg["to"]
                if up in row:
                    leaving[row[up]] += abs(w["leg " + leg["id"]])
            for leg in legs:
                flow = w["leg " + leg["id"]]
                up, down = (leg["from"], leg["to"]) if flow >= 0 else (leg["to"], leg["from"])
                if leg.get("dust") == kind and down in row:
                    fed[row[down]] += leg["feed"]
                elif up in row and down in row and leaving[row[up]] > 0:
                    matrix[row[down], row[up]] -= abs(flow) / leaving[row[up]]
            through = np.linalg.solve(matrix, fed)  # dust that passes each point
            for leg in legs:
                flow = w["leg " + leg["id"]]
                up = leg["from"] if flow >= 0 else leg["to"]
                if leg.get("dust") == kind:
                    flows[leg["id"]][kind] = leg["feed"]
                elif up in row and leaving[row[up]] > 0 and through[row[up]] > 0:
                    flows[leg["id"]][kind] = through[row[up]] * abs(flow) / leaving[row[up]]
        return flows

    def leg(self, leg, p1, p2, w, junction, dust):
        area = math.pi / 4 * leg["bore"] ** 2
        kinetic = w * w * self.rt / area ** 2
        P1, P2 = p1 * p1, p2 * p2 + junction
        up, down, sign = (P1, P2, 1) if w >= 0 else (P2, P1, -1)
        down = max(down, kinetic)
        re = 4 * abs(w) / (math.pi * leg["bore"] * self.mu)
        f = leg["friction"] if leg.get("friction") is not None else darcy(max(re, 1e-9), leg["roughness"] / leg["bore"])
        total = f * leg["length"] / leg["bore"] + leg["k"] + math.log(up / down)
        added = 0
        if dust:
            mean = (math.sqrt(up) + math.sqrt(down)) / 2
            rho = mean / self.rt
            leg["forward"] = w >= 0
            v = abs(w) / (rho * area)
            every = sum(dust.values()) / area
            added = 2 * mean * sum(self.dusts[k].drop(leg, rho, max(v, 1e-9), m / area, every) for k, m in dust.items())
        return (up - down - kinetic * total - added) * sign / self.pa ** 2

    def pump(self, station, pump, p, w, speed_ratio):
        """Two residuals: flow at the speed, and the speed itself (fixed, or moved until the vacuum is the held one)."""
        density = p / self.rt
        silencer = pump["silencer"]["loss"] * (w / pump["silencer"]["at"]) ** 2 if pump.get("silencer") else 0
        dp = self.pa + silencer - p
        slip = pump["slip"] * math.copysign(math.sqrt(abs(dp) / PSI * RHO_SLIP / density), dp)
        least, greatest = pump["least"], pump["greatest"]
        speed = speed_ratio * greatest
        flow = w - max(0, density * pump["displacement"] * (speed - slip))
        if pump.get("hold") is None:
            return flow / self.scale, speed_ratio - 1
        wanted = speed_ratio + 5 * (pump["hold"] - (self.pa - p)) / self.pa
        return flow / self.scale, speed_ratio - min(max(wanted, least / greatest), 1)

    def relief(self, station, p):
        valve = station.get("relief")
        if not valve:
            return 0
        v = self.pa - p
        if v <= valve["set"]:
            return 0
        if v <= valve["set"] + valve["accumulation"]:
            return valve["rated"] * (v - valve["set"]) / valve["accumulation"]
        return valve["rated"] * math.sqrt(v / (valve["set"] + valve["accumulation"]))

    def residuals(self, v):
        p, w, speeds = self.unpack(v)
        balance = {n: self.d["supplies"].get(n, 0.0) for n in self.free}

        def move(a, b, flow):
            if a in balance:
                balance[a] -= flow
            if b in balance:
                balance[b] += flow

        laws = []
        loss = self.junctions(w)
        dust = self.dust_flows(w) if self.dusts else {}
        for leg in self.d["legs"]:
            flow = w["leg " + leg["id"]]
            laws.append(self.leg(leg, p[leg["from"]], p[leg["to"]], flow, loss.get(leg["id"], 0), dust.get(leg["id"])))
            move(leg["from"], leg["to"], flow)
        for leak in self.d["leaks"]:
            gap = self.pa ** 2 - p[leak["node"]] ** 2
            move("air", leak["node"], leak["c"] * math.copysign(math.sqrt(abs(gap)), gap))
        for z in self.d["nozzles"]:
            move("air", z["node"], nozzle(z["area"], self.pa, p[z["node"]], self.rt))
        for s in self.d["stations"]:
            flow = w["filter " + s["receiver"]]
            drop = 2 * s["resistance"] * self.rt / s["cloth"] * flow
            laws.append((p[s["receiver"]] ** 2 - p[s["clean"]] ** 2 - drop) / self.pa ** 2)
            move(s["receiver"], s["clean"], flow)
            if s["suction"] != s["clean"]:
                flow = w["safety " + s["receiver"]]
                drop = 2 * self.pa * s["safety"]["loss"] * (flow / s["safety"]["at"]) * abs(flow / s["safety"]["at"])
                laws.append((p[s["clean"]] ** 2 - p[s["suction"]] ** 2 - drop) / self.pa ** 2)
                move(s["clean"], s["suction"], flow)
            move("air", s["suction"], self.relief(s, p[s["suction"]]))
        for (s, pump), ratio in zip(self.pumps, speeds):
            flow = w["pump " + pump["id"]]
            laws.extend(self.pump(s, pump, p[s["suction"]], flow, ratio))
            move(s["suction"], "air", flow)
        return np.array([x / self.scale for x in balance.values()] + laws)

    def solve(self):
        best = None
        for seed in range(40):
            try:
                found = least_squares(self.residuals, self.start(seed), xtol=1e-15, ftol=1e-15, gtol=1e-15, max_nfev=400)
                v = found.x
                polished = root(self.residuals, v, method="hybr", tol=1e-14)
                if np.abs(polished.fun).max() < np.abs(found.fun).max():
                    v = polished.x
                v = self.newton(v)
            except (ValueError, ZeroDivisionError, np.linalg.LinAlgError):
                continue
            misfit = float(np.abs(self.residuals(v)).max())
            if best is None or misfit < best[0]:
                best = (misfit, v)
            if misfit < 1e-12:
                break
        if best is None:
            raise RuntimeError("the peer found no solution of " + self.d["name"])
        p, w, speeds = self.unpack(best[1])
        dust = self.dust_flows(w) if self.dusts else {}
        carried = {"leg " + leg["id"]: float(sum(dust.get(leg["id"], {}).values())) for leg in self.d["legs"]}
        return {"pressures": p, "flows": w, "dust": carried, "misfit": best[0]}

    def newton(self, v):
        """A few full steps with central differences, to the last digits."""
        for _ in range(4):
            r = self.residuals(v)
            jacobian = np.empty((len(r), len(v)))
            for n in range(len(v)):
                h = 1e-6 * max(abs(v[n]), 1e-3)
                up, down = v.copy(), v.copy()
                up[n] += h
                down[n] -= h
                jacobian[:, n] = (self.residuals(up) - self.residuals(down)) / (2 * h)
            step = np.linalg.lstsq(jacobian, -r, rcond=None)[0]
            if np.abs(self.residuals(v + step)).max() >= np.abs(r).max():
                break
            v = v + step
        return v


def single_leg(case):
    """Flow of one leg with the library's isothermal equation, its friction number being f L/D + K at that flow.

    The library takes f L/D alone (its L is chosen to give the wanted resistance) and a density at the inlet.
    """
    rho = case["p1"] / case["rt"]
    area = math.pi / 4 * case["bore"] ** 2
    w = area * 100
    for _ in range(200):
        re = 4 * w / (math.pi * case["bore"] * case["viscosity"])
        f = darcy(re, case["roughness"] / case["bore"])
        resistance = f * case["length"] / case["bore"] + case["k"]
        equivalent = resistance * case["bore"] / f
        choke = P_isothermal_critical_flow(P=case["p1"], fd=f, D=case["bore"], L=equivalent)
        before, w = w, isothermal_gas(rho=rho, fd=f, P1=case["p1"], P2=max(case["p2"], choke * (1 + 1e-12)), L=equivalent, D=case["bore"])
        if abs(w - before) < 1e-15 * w:
            break
    return {"flow": float(w), "choke_pressure": float(choke)}


asked = json.load(sys.stdin)
json.dump({
    "networks": [Network(n).solve() for n in asked.get("networks", [])],
    "legs": [single_leg(c) for c in asked.get("legs", [])],
}, sys.stdout)
