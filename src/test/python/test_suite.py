"""The public suite for kernels, jupyter_kernel_test, with samples of Leverbook's.

Left out, because Leverbook has no such thing: a pager (help is shown under the cell) and a word
that clears what a cell has shown.
"""
import unittest

import jupyter_kernel_test

LIFT = "hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start()"


class LeverbookSuite(jupyter_kernel_test.KernelTests):
    kernel_name = "leverbook"
    language_name = "java"
    file_extension = ".java"

    code_hello_world = 'System.out.println("hello, world")'
    code_stderr = 'System.err.println("oops")'
    code_generate_error = "barbell(140)"
    code_inspect_sample = "barbell("
    completion_samples = [
        {"text": "barb", "matches": {"barbell(", "barbellCurl("}},
        {"text": "zzqq", "matches": set()},
    ]
    complete_code_samples = ["", "1 + 1", "int i = 0;", "// only a remark", "if (true) {\n}"]
    incomplete_code_samples = ["if (true) {", "barbell(", "int m() {\n  return 1;"]
    invalid_code_samples = ["foo ) bar"]
    code_execute_result = [
        {"code": "6 * 7", "result": "42"},
        {"code": '"N·m"', "result": "N·m"},
        {"code": LIFT + ".moments()", "mime": "text/html"},
        {"code": LIFT + ".picture()", "mime": "image/svg+xml"},
        {"code": LIFT + ".picture().styled(slide())", "mime": "image/png"},
    ]
    code_display_data = [
        {"code": "display(" + LIFT + ".moments());", "mime": "text/html"},
        {"code": "display(" + LIFT + ".picture());", "mime": "image/png"},
        {"code": "for (int i = 0; i < 2; i++) { display(i); }", "mime": "text/plain"},
    ]
    # The star of the sample; in a pattern a star would stand for anything.
    code_history_pattern = "6 ? 7"
    supported_history_operations = ("tail", "range", "search")


if __name__ == "__main__":
    unittest.main(verbosity=2)
