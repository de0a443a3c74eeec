"""Executes notebooks with nbclient through the kernel each names; prints for each, as JSON, its outputs' kinds or its error."""
import json
import sys

import nbformat
from nbclient import NotebookClient
from nbclient.exceptions import CellExecutionError

for path in sys.argv[1:]:
    notebook = nbformat.read(path, as_version=4)
    result = {"file": path, "kernel": notebook.metadata.kernelspec.name, "error": None}
    try:
        NotebookClient(notebook, timeout=120, startup_timeout=60).execute()
    except CellExecutionError as failure:
        result["error"] = str(failure)
    nbformat.validate(notebook)
    outputs = [output for cell in notebook.cells if cell.cell_type == "code" for output in cell.outputs]
    result["kinds"] = sorted({kind for output in outputs for kind in output.get("data", {})})
    result["counts"] = [cell.execution_count for cell in notebook.cells if cell.cell_type == "code" and cell.source.strip()]
    print(json.dumps(result), flush=True)
