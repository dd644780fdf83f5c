"""Explosion vent areas by two published methods, written apart from the engine, in the units the methods are published in.

Reads one case a line from standard input, separated by blanks:
    volume_m3  kst_bar_m_s  pmax_bar  pstat_bar  pred_bar  length_over_diameter  duct_m  duct_loss_coefficient
Writes one line a case, "-" where a method gives no number:
    area_en_14491_m2  area_nfpa_68_m2  area_nfpa_68_with_duct_m2
Needs nothing but Python. Constants by public listings of the methods, see docs/equations/hazard.md.
"""
import math
import sys


def en_14491(v, kst, pmax, pstat, pred, ld):
    in_range = (0.1 <= v <= 1e4 and 10 <= kst <= 800 and 5 <= pmax <= (10 if kst <= 300 else 12)
                and 0 <= pstat <= 1 and 0.1 <= pred <= 2 and pred > max(0.1, pstat) and 1 <= ld <= 20)
    if not in_range:
        return None
    pstat = max(pstat, 0.1)
    b = (3.264e-5 * pmax * kst / pred ** 0.569 + 0.27 * (pstat - 0.1) / math.sqrt(pred)) * v ** 0.753
    c = 0.758 - 4.305 * math.log(pred) / math.log(10) if pred < 1.5 else 0.0
    return b + b * c * math.log(ld, 10)


def nfpa_68(v, kst, pmax, pstat, pred, ld):
    in_range = (0.1 <= v <= 1e4 and 10 <= kst <= 800 and 5 <= pmax <= 12 and 0 <= pstat <= 0.75
                and pstat < pred < pmax and 1 <= ld <= 6)
    if not in_range:
        return None
    area = 1e-4 * kst * (1 + 1.54 * pstat ** (4 / 3)) * (v ** 3) ** 0.25 * math.sqrt((pmax - pred) / pred)
    return area if ld <= 2 else area * (1 + 0.6 * (ld - 2) ** 0.75 / math.exp(0.95 * pred * pred))


def ducted(area, v, kst, pstat, duct, k):
    """Fixed point from below: it climbs to the smaller root, or away where there is none."""
    scale, a = area * math.sqrt(k / 1.5), 0.0
    for _ in range(200_000):
        e1 = a * duct / v
        e2 = 1e4 * a / ((1 + 1.54 * pstat ** (4 / 3)) * kst * v ** 0.75)
        following = scale * (1 + 1.18 * e1 ** 0.8 * e2 ** 0.4)
        if following > 1e6 * scale:
            return None
        if abs(following - a) <= 1e-14 * following:
            return following
        a = following
    return None


for line in sys.stdin:
    v, kst, pmax, pstat, pred, ld, duct, k = map(float, line.split())
    en = en_14491(v, kst, pmax, pstat, pred, ld)
    us = nfpa_68(v, kst, pmax, pstat, pred, ld)
    with_duct = None if us is None else ducted(us, v, kst, pstat, duct, k)
    print(*("-" if x is None else repr(x) for x in (en, us, with_duct)))
