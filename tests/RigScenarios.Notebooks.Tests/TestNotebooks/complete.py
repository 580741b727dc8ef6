"""Starts the C# kernel as Jupyter does, runs the given first cell, and prints what is offered after each of the given words, one a line."""
import json
import sys

from jupyter_client.manager import start_new_kernel

start, words = sys.argv[1], sys.argv[2:]
manager, client = start_new_kernel(kernel_name=".net-csharp", startup_timeout=60)
try:
    # What the first cell imports is there once a second one has run.
    for cell in (start, "1"):
        client.execute_interactive(cell, timeout=120, output_hook=lambda message: None)
    for word in words:
        client.complete(word, len(word))
        print("offered " + json.dumps(client.get_shell_msg(timeout=120)["content"].get("matches", [])))
finally:
    client.stop_channels()
    manager.shutdown_kernel(now=True)
