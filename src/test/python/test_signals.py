"""Interrupts by message and by signal: the cell stops, what was computed stays."""
import json
import os
import pathlib
import time
import unittest

from jupyter_client.manager import KernelManager

PATIENCE = 120


class Interrupts(unittest.TestCase):
    def interrupted(self, name):
        manager = KernelManager(kernel_name=name)
        manager.start_kernel()
        client = manager.client()
        client.start_channels()
        try:
            client.wait_for_ready(timeout=PATIENCE)
            client.execute_interactive("int kept = 31;", timeout=PATIENCE)
            for _ in range(3):
                asked = client.execute('System.out.println("on"); while (true) { }')
                while client.get_iopub_msg(timeout=PATIENCE)["msg_type"] != "stream":
                    pass
                manager.interrupt_kernel()
                reply = client.get_shell_msg(timeout=PATIENCE)
                self.assertEqual(asked, reply["parent_header"]["msg_id"])
                self.assertEqual("Stopped", reply["content"]["ename"])
            told = []
            reply = client.execute_interactive(
                "kept", timeout=PATIENCE, output_hook=lambda message: told.append(message)
            )
            self.assertEqual("ok", reply["content"]["status"])
            results = [m for m in told if m["msg_type"] == "execute_result"]
            self.assertEqual("31", results[0]["content"]["data"]["text/plain"])
            self.assertTrue(manager.is_alive())
        finally:
            client.stop_channels()
            began = time.time()
            manager.shutdown_kernel()
            self.assertLess(time.time() - began, 30)

    def test_by_message(self):
        self.interrupted("leverbook")

    def test_by_signal(self):
        kernels = pathlib.Path(os.environ["JUPYTER_DATA_DIR"]) / "kernels"
        spec = json.loads((kernels / "leverbook" / "kernel.json").read_text())
        spec["interrupt_mode"] = "signal"
        (kernels / "leverbook-signal").mkdir(exist_ok=True)
        (kernels / "leverbook-signal" / "kernel.json").write_text(json.dumps(spec))
        self.interrupted("leverbook-signal")

    def test_restart_keeps_nothing_and_answers_again(self):
        manager = KernelManager(kernel_name="leverbook")
        manager.start_kernel()
        client = manager.client()
        client.start_channels()
        try:
            client.wait_for_ready(timeout=PATIENCE)
            client.execute_interactive("int gone = 1;", timeout=PATIENCE)
            manager.restart_kernel()
            client.wait_for_ready(timeout=PATIENCE)
            reply = client.execute_interactive("gone", timeout=PATIENCE, output_hook=lambda m: None)
            self.assertEqual("error", reply["content"]["status"])
        finally:
            client.stop_channels()
            manager.shutdown_kernel()


if __name__ == "__main__":
    unittest.main(verbosity=2)
