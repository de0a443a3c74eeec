"""A front end that starts a kernel, leaves a cell in an endless loop, prints the kernel's process number and dies without a word."""
import os
import signal

from jupyter_client.manager import start_new_kernel

manager, client = start_new_kernel(kernel_name="strut-lessons", startup_timeout=60)
client.execute("while (true) { }")
while client.get_iopub_msg(timeout=60)["msg_type"] != "execute_input":
    pass
print(manager.provisioner.process.pid, flush=True)
os.remove(manager.connection_file)  # The front end's own file; who dies cannot tidy up.
os.kill(os.getpid(), signal.SIGKILL)
