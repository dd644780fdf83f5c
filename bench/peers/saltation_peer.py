"""Saltation and terminal velocities by python3-fluids, as an outside reference for the engine.

Reads one case a line from standard input, SI units, separated by blanks:
    solids_kg_s  particle_density  particle_size_m  air_density  bore_m  viscosity_Pa_s  terminal_velocity_m_s
Writes one line a case:
    rizk  matsumoto1974  matsumoto1975  matsumoto1977  schade  weber  geldart_ling  terminal_velocity_of_a_sphere
Ends with status 3 where the library is not installed.
"""
import sys

try:
    from fluids.drag import v_terminal
    from fluids.saltation import (Geldart_Ling, Matsumoto_1974, Matsumoto_1975, Matsumoto_1977, Rizk, Schade,
                                  Weber_saltation)
except ImportError:
    sys.exit(3)

for line in sys.stdin:
    m, rhop, d, rho, D, mu, vt = map(float, line.split())
    print(*map(repr, (
        Rizk(m, d, rho, D),
        Matsumoto_1974(m, rhop, d, rho, D, vt),
        Matsumoto_1975(m, rhop, d, rho, D, vt),
        Matsumoto_1977(m, rhop, d, rho, D, vt),
        Schade(m, rhop, d, rho, D),
        Weber_saltation(m, rhop, d, rho, D, vt),
        Geldart_Ling(m, rho, D, mu),
        v_terminal(d, rhop, rho, mu),
    )))
