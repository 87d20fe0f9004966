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

    def test_a_conversation(self):
        self.console.expect("Leverbook")
        self.prompt(1)
        self.console.send("40 + 2\r")
        self.console.expect(r"Out\[.*1.*\]: .*42")
        self.prompt(2)
        # The console passes an interrupt on only while it waits for the cell.
        self.console.send('System.out.println("o" + "n"); while (true) { }\r')
        self.console.expect("on\r\n")
        self.console.sendintr()
        self.console.expect("Stopped")
        self.prompt(3)
        self.console.send("quit()\r")
        self.console.expect(pexpect.EOF)


if __name__ == "__main__":
    unittest.main(verbosity=2)
