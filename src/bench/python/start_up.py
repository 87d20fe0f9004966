#!/usr/bin/env python3
"""Times the shell's start on a pseudo-terminal, beside the JDK's own jshell with the same class path.

Imitates a coach who opens the shell and types 1+1. Takes turns, so that a busy machine slows both
alike; prints the median in seconds of the time to the first prompt and to the first answer, and the
ratio to jshell.

    mvn -q -DskipTests package && python3 src/bench/python/start_up.py [--java DIR] [--runs N]
"""

import argparse
import fcntl
import glob
import os
import pty
import re
import select
import statistics
import struct
import subprocess
import tempfile
import termios
import time


def timed(command, prompt, answer, environment, stay=0):
    """Seconds from the start to the prompt and to the answer of 1+1."""
    start = time.monotonic()
    process, terminal = pty.fork()
    if process == 0:
        os.execvpe(command[0], command, environment)
    fcntl.ioctl(terminal, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
    seen = b""
    prompted = None
    try:
        while True:
            if not select.select([terminal], [], [], 30)[0]:
                raise RuntimeError("nothing more after %r" % seen[-400:])
            seen += os.read(terminal, 65536)
            plain = re.sub(rb"\x1b\[[0-9;?]*[ -/]*[@-~]|\x1b[=>]", b"", seen)
            if prompted is None and prompt in plain:
                prompted = time.monotonic() - start
                os.write(terminal, b"1+1\r")
            elif prompted is not None and re.search(answer, plain.split(prompt, 1)[1]):
                answered = time.monotonic() - start
                time.sleep(stay)
                return prompted, answered
    finally:
        os.close(terminal)
        subprocess.run(["kill", "-9", str(process)], check=False)
        os.waitpid(process, 0)


def main():
    options = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    options.add_argument("--java", default=os.environ.get("JAVA_HOME", ""), help="a JDK's folder")
    options.add_argument("--runs", type=int, default=9)
    options.add_argument("--settle", type=int, default=20, help="seconds the first shells stay open")
    options.add_argument("--jar", default="target/leverbook.jar")
    chosen = options.parse_args()
    tools = os.path.join(chosen.java, "bin") + os.sep if chosen.java else ""
    jars = [chosen.jar] + sorted(glob.glob(os.path.join(os.path.dirname(chosen.jar), "lib", "*.jar")))
    home = tempfile.mkdtemp()
    environment = dict(os.environ, TERM="xterm", XDG_STATE_HOME=home, XDG_CACHE_HOME=home)
    doors = {
        "jshell": ([tools + "jshell", "--class-path", ":".join(jars)], b"jshell> ", rb"==> 2\r"),
        "leverbook": ([tools + "java", "-jar", chosen.jar], b"lever> ", rb"\n2\r"),
    }
    # The first start of each is not counted: it fills the disk's cache and makes what is made once.
    times = {name: [] for name in doors}
    for name, door in doors.items():
        timed(*door, environment, chosen.settle)
    for _ in range(chosen.runs):
        for name, door in doors.items():
            times[name].append(timed(*door, environment))
    middle = {n: [statistics.median(t[i] for t in times[n]) for i in (0, 1)] for n in doors}
    print("%-10s %8s %8s" % ("", "prompt", "answer"))
    for name in doors:
        print("%-10s %8.2f %8.2f" % (name, *middle[name]))
    print("%-10s %8.2f %8.2f" % ("ratio", *[middle["leverbook"][i] / middle["jshell"][i] for i in (0, 1)]))


if __name__ == "__main__":
    main()
