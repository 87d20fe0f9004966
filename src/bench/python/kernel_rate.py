"""How fast the kernel answers, beside Python's own kernel, by a real client on the same machine.

    java -jar target/leverbook.jar kernel install --prefix /tmp/bench
    JUPYTER_PATH=/tmp/bench/share/jupyter python3 src/bench/python/kernel_rate.py

Python's kernel is the plain baseline: it does the same work of messages and nothing of Java's. A
row without a wanted figure is told for comparison only.
"""
import argparse
import os
import statistics
import time
from queue import Empty

from jupyter_client.manager import KernelManager

PATIENCE = 120

LANGUAGES = {
    "leverbook": {
        "cell": "1 + %d",
        "keep": "var kept = 41;",
        "kept": "kept + %d",
        "loop": 'System.out.println("on"); while (true) { }',
        "complete": "barb",
        "memory": "System.gc(); System.gc();"
        " var pools = java.lang.management.ManagementFactory.getMemoryMXBean();"
        " (pools.getHeapMemoryUsage().getUsed() + pools.getNonHeapMemoryUsage().getUsed()) / 1024",
        "lift": "hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start().moments()",
    },
    "python3": {
        "cell": "1 + %d",
        "keep": "kept = 41",
        "kept": "kept + %d",
        "loop": "print('on')\nwhile True: pass",
        "complete": "prin",
        "memory": None,
        "lift": None,
    },
}

WANTED = {
    "first kernel_info answer (s)": 1.0,
    "first result (s)": 1.5,
    "trivial cell, median (ms)": 25,
    "trivial cell, 95th centile (ms)": 60,
    "completion, median (ms)": 20,
    "interrupt of a busy loop, median (ms)": 100,
    "last 100 cells over first 100 of all": 1.3,
    "memory a cell (kB)": 150,
}


class Talk:
    """A kernel and its client."""

    def __init__(self, name):
        self.words = LANGUAGES[name]
        self.manager = KernelManager(kernel_name=name)
        self.began = time.perf_counter()
        self.manager.start_kernel()
        self.client = self.manager.client()
        self.client.start_channels()

    def since(self):
        return time.perf_counter() - self.began

    def reply(self, asked):
        while True:
            reply = self.client.get_shell_msg(timeout=PATIENCE)
            if reply["parent_header"].get("msg_id") == asked:
                return reply["content"]

    def idle(self, asked):
        while True:
            told = self.client.get_iopub_msg(timeout=PATIENCE)
            mine = told["parent_header"].get("msg_id") == asked
            if mine and told["content"].get("execution_state") == "idle":
                return

    def ready(self):
        """Until iopub is heard too."""
        while True:
            asked = self.client.kernel_info()
            self.reply(asked)
            try:
                while True:
                    told = self.client.get_iopub_msg(timeout=0.2)
                    if told["parent_header"].get("msg_id") == asked:
                        return
            except Empty:
                continue

    def run(self, code):
        """Seconds from sending to the reply and the idle after it."""
        began = time.perf_counter()
        asked = self.client.execute(code)
        content = self.reply(asked)
        self.idle(asked)
        return time.perf_counter() - began, content

    def memory(self):
        """What the kernel holds, in kB: live objects and code, where it can say; else the process."""
        if self.words["memory"]:
            asked = self.client.execute(self.words["memory"])
            while True:
                told = self.client.get_iopub_msg(timeout=PATIENCE)
                if told["parent_header"].get("msg_id") == asked:
                    if told["msg_type"] == "execute_result":
                        held = int(told["content"]["data"]["text/plain"])
                    if told["content"].get("execution_state") == "idle":
                        return held
        with open("/proc/%d/status" % self.manager.provisioner.pid, encoding="ascii") as status:
            for line in status:
                if line.startswith("VmRSS"):
                    return int(line.split()[1])
        return 0

    def interrupted(self, round_number):
        asked = self.client.execute(self.words["loop"])
        while True:
            told = self.client.get_iopub_msg(timeout=PATIENCE)
            if told["msg_type"] == "stream":
                break
        time.sleep(0.05)
        began = time.perf_counter()
        self.manager.interrupt_kernel()
        self.reply(asked)
        spent = time.perf_counter() - began
        self.idle(asked)
        content = self.run(self.words["kept"] % round_number)[1]
        return spent, content["status"] == "ok"

    def end(self):
        self.client.stop_channels()
        self.manager.shutdown_kernel()


def centile(values, share):
    return sorted(values)[min(len(values) - 1, int(share * len(values)))]


def measured(name, cells, starts):
    figures = {}
    infos, firsts, lifts = [], [], []
    for _ in range(starts):
        talk = Talk(name)
        asked = talk.client.kernel_info()
        talk.reply(asked)
        infos.append(talk.since())
        talk.reply(talk.client.execute("1 + 1"))
        firsts.append(talk.since())
        if talk.words["lift"]:
            talk.ready()
            lifts.append(talk.run(talk.words["lift"])[0])
        talk.end()
    figures["first kernel_info answer (s)"] = statistics.median(infos)
    figures["first result (s)"] = statistics.median(firsts)
    if lifts:
        figures["first lift and its table after that (s)"] = statistics.median(lifts)

    talk = Talk(name)
    talk.ready()
    talk.run(talk.words["keep"])
    warm = [talk.run(talk.words["cell"] % i)[0] for i in range(100)]
    before = talk.memory()
    times = [talk.run(talk.words["cell"] % i)[0] for i in range(cells)]
    after = talk.memory()
    figures["cell among the first 100, median (ms)"] = 1000 * statistics.median(warm)
    figures["trivial cell, median (ms)"] = 1000 * statistics.median(times)
    figures["trivial cell, 95th centile (ms)"] = 1000 * centile(times, 0.95)
    figures["last 100 cells over first 100 of all"] = statistics.median(
        times[-100:]
    ) / statistics.median(times[:100])
    figures["memory a cell (kB)"] = (after - before) / cells

    completions = []
    for i in range(60):
        began = time.perf_counter()
        talk.reply(talk.client.complete(talk.words["complete"]))
        if i >= 10:
            completions.append(time.perf_counter() - began)
    figures["completion, median (ms)"] = 1000 * statistics.median(completions)

    stops = [talk.interrupted(i) for i in range(30)]
    figures["interrupt of a busy loop, median (ms)"] = 1000 * statistics.median(s for s, _ in stops)
    figures["variables kept after an interrupt, of 30"] = sum(kept for _, kept in stops)
    if talk.words["lift"]:
        rows = [talk.run(talk.words["lift"])[0] for _ in range(30)]
        figures["a lift and its table, warm, median (ms)"] = 1000 * statistics.median(rows)
    talk.end()
    return figures


def main():
    options = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    options.add_argument("--cells", type=int, default=1000)
    options.add_argument("--starts", type=int, default=5)
    options.add_argument("kernels", nargs="*", default=["python3", "leverbook"])
    asked = options.parse_args()
    print("load before: %.1f %.1f %.1f, %d cores" % (*os.getloadavg(), os.cpu_count()))
    tables = {name: measured(name, asked.cells, asked.starts) for name in asked.kernels}
    print("load after: %.1f %.1f %.1f" % os.getloadavg())
    rows = list(dict.fromkeys(row for table in tables.values() for row in table))
    print("%-45s %s %10s" % ("", " ".join("%12s" % name for name in tables), "wanted"))
    for row in rows:
        cells = ["%12.3g" % t[row] if row in t else "%12s" % "" for t in tables.values()]
        print("%-45s %s %10s" % (row, " ".join(cells), WANTED.get(row, "")))


if __name__ == "__main__":
    main()
