"""Notebooks run by nbclient and converted by nbconvert."""
import base64
import pathlib
import re
import tempfile
import unittest

import nbformat
from nbclient import NotebookClient
from nbclient.exceptions import CellExecutionError
from nbconvert import HTMLExporter, MarkdownExporter

CELLS = [
    "var lifter = person(MALE, kg(85), cm(178));",
    "var start = hinge(lifter).holding(barbell(kg(140))).start();\nstart.moments()",
    "start.picture()",
    'for (int i = 0; i < 3; i++) { System.out.println("set " + i); }',
    'var place = display("first"); place.update("second");',
    'new Thread(() -> System.out.println("from a thread")).start(); Thread.sleep(200);',
]


def notebook(cells):
    made = nbformat.v4.new_notebook()
    made.metadata["kernelspec"] = {
        "name": "leverbook",
        "display_name": "Leverbook",
        "language": "java",
    }
    made.cells = [nbformat.v4.new_code_cell(cell) for cell in cells]
    return made


class Notebooks(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.made = notebook(CELLS)
        NotebookClient(cls.made, timeout=300, kernel_name="leverbook").execute()

    def test_outputs_stand_under_their_cells(self):
        nbformat.validate(self.made)
        outputs = [cell.outputs for cell in self.made.cells]
        self.assertEqual([], outputs[0])
        self.assertIn("<table>", outputs[1][0]["data"]["text/html"])
        picture = outputs[2][0]["data"]
        self.assertEqual({"text/plain", "text/html", "image/svg+xml", "image/png"}, set(picture))
        self.assertEqual("set 0\nset 1\nset 2\n", outputs[3][0]["text"])
        self.assertEqual("second", outputs[4][0]["data"]["text/plain"])
        self.assertEqual(1, len(outputs[4]))
        self.assertEqual("from a thread\n", outputs[5][0]["text"])
        self.assertEqual("java", self.made.metadata["language_info"]["name"])

    def test_a_failing_cell_ends_the_run_with_its_reason(self):
        failing = notebook(["int before = 1;", "barbell(140)", "int never = 1;"])
        with self.assertRaises(CellExecutionError) as raised:
            NotebookClient(failing, timeout=300, kernel_name="leverbook").execute()
        self.assertIn("barbell(140)", str(raised.exception))
        self.assertEqual("error", failing.cells[1].outputs[0]["output_type"])
        self.assertEqual([], failing.cells[2].outputs)

    def test_the_notebook_becomes_a_page_and_markdown(self):
        page, _ = HTMLExporter().from_notebook_node(self.made)
        self.assertIn("N·m", page)
        # This nbconvert empties a drawing that stands in the page; as an image it stays.
        drawing = re.search(r'src="data:image/svg\+xml;base64,([^"]+)"', page).group(1)
        self.assertIn("<path", base64.b64decode(drawing).decode("utf-8"))
        text, extra = MarkdownExporter().from_notebook_node(self.made)
        self.assertIn("```java", text)
        self.assertTrue(any(name.endswith(".png") for name in extra["outputs"]) or "svg" in text)
        with tempfile.TemporaryDirectory() as folder:
            file = pathlib.Path(folder) / "lesson.html"
            file.write_text(page, encoding="utf-8")
            self.assertGreater(file.stat().st_size, 10_000)


if __name__ == "__main__":
    unittest.main(verbosity=2)
