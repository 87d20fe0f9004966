"""jupyter-console at a terminal: values, more lines, an interrupt, and the end."""
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
        # The console passes an interrupt on only while it waits for the cell.
        self.typed('System.out.println("o" + "n"); while (true) { }', "on\r\n")
        self.console.sendintr()
        self.console.expect("Stopped")
        self.prompt(3)
        self.typed("quit()", pexpect.EOF)


if __name__ == "__main__":
    unittest.main(verbosity=2)
