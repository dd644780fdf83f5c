#!/usr/bin/env bash
# Measures speed, our own routes and the peers, and stores raw rows with command, commit and machine under bench/runs/<date>-<name>/.
#   bench/run.sh NAME [race|all]      race: peers only, about 2 minutes; all (default): JMH besides, about 8 minutes
# Needs python3 with numba, numpy and scipy for the peers (Debian: python3-numba python3-scipy); set PYTHON to choose it.
set -euo pipefail
name=${1:?name of the run, such as the machine}
what=${2:-all}
cd "$(dirname "$0")/.."
out=bench/runs/$(date -u +%Y-%m-%d)-$name
mkdir -p "$out"
python=${PYTHON:-/usr/bin/python3}
export OPENBLAS_NUM_THREADS=1 OMP_NUM_THREADS=1 NUMBA_NUM_THREADS=1

mvn -q -B test-compile -pl bench -am
mvn -q -B dependency:build-classpath -Dmdep.outputFile=target/classpath -Dmdep.excludeArtifactIds=dustwright-engine,dustwright-plantfile -pl engine
jmh=$(find "${HOME}/.m2" -name 'jmh-core-1.37.jar' -o -name 'jopt-simple-*.jar' -path '*jopt*' -o -name 'commons-math3-*.jar' -path '*math3*' | grep -v sources | tr '\n' ':')
classpath=bench/target/classes:engine/target/classes:$(cat engine/target/classpath):$jmh

{
    echo "command: bench/run.sh $*"
    echo "date: $(date -u +%Y-%m-%dT%H:%MZ)"
    echo "commit: $(git rev-parse HEAD)$(git diff --quiet HEAD -- . ':!bench/runs' || echo ' with uncommitted changes')"
    echo "processor: $(grep -m1 'model name' /proc/cpuinfo | cut -d: -f2), $(nproc --all) seen"
    echo "kernel: $(uname -sr)"
    echo "java: $(java -version 2>&1 | head -1)"
    echo "python: $("$python" -c 'import sys, numba, numpy, scipy; print(sys.version.split()[0], "numba", numba.__version__, "numpy", numpy.__version__, "scipy", scipy.__version__)')"
    echo "load at start: $(cut -d' ' -f1-3 /proc/loadavg)"
} > "$out/facts.txt"

java -Xms512m -XX:+UseSerialGC -cp "$classpath" dustwright.bench.PeerRace "$out" bench/peers "$python" | tee "$out/race.csv"
echo "load after the race: $(cut -d' ' -f1-3 /proc/loadavg)" >> "$out/facts.txt"
if [ "$what" = all ]; then
    java -cp "$classpath" org.openjdk.jmh.Main 'dustwright.bench.(SolveBenchmark|ScalingBenchmark)' -prof gc -rf csv -rff "$out/jmh.csv"
    echo "load after JMH: $(cut -d' ' -f1-3 /proc/loadavg)" >> "$out/facts.txt"
fi
rm -f "$out"/tree-*.json
"$python" bench/peers/race_summary.py "$out/race.csv" | tee "$out/summary.txt"
