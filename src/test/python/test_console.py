"""jupyter-console at a terminal: values, a cell of several lines, an error, and the end.

Ctrl-C is not among it: the console of Debian 12 passes it on to no kernel, also not to its own
Python's. Interrupts are tested in test_signals.py.
"""
import os
import re
import sys
import unittest

import pexpect

PATIENCE = 120


class Console(unittest.TestCase):
    def setUp(self):
        environment = dict(os.environ, TERM="xterm", PROMPT_TOOLKIT_NO_CPR="1", NO_COLOR="1")
        self.console = pexpect.spawn(
            sys.executable,
            ["-m", "jupyter_console", "--kernel=leverbook"],
            env=environment,
            encoding="utf-8",
            timeout=PATIENCE,
            dimensions=(40, 120),
        )

    def tearDown(self):
        self.console.close(force=True)

    def prompt(self, number):
        self.console.expect(re.compile(r"In \[.*%d.*\]: " % number))

    def typed(self, line, answer):
        # On a slow machine the console's own key handling may fail and ask for ENTER.
        for _ in range(5):
            self.console.send(line + "\r")
            if self.console.expect([answer, "Press ENTER to continue"]) == 0:
                return
            self.console.send("\r")
            self.console.expect(r"In \[")
        self.fail("the console did not take " + line)

    def test_a_conversation(self):
        self.console.expect("Leverbook")
        self.prompt(1)
        self.typed("40 + 2", r"Out\[.*1.*\]: .*42")
        self.prompt(2)
        # The console asks the kernel whether the cell is finished, and goes on where it is not.
        self.typed("int twice(int n) {", r"\.\.\.")
        self.typed("return 2 * n; }", r"In \[.*3")
        self.typed("twice(twice(21))", r"Out\[.*3.*\]: .*84")
        self.prompt(4)
        self.typed("barbell(140)", r"1:9: ")
        self.prompt(5)
        self.typed("quit()", pexpect.EOF)


if __name__ == "__main__":
    unittest.main(verbosity=2)
