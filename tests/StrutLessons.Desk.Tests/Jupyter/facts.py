"""Runs the registered kernel as a Jupyter front end does and prints what it saw, as JSON, for ProtocolTests."""
import json
import os
import re
import signal
import time

import zmq
from jupyter_client.manager import start_new_kernel
from jupyter_client.session import Session

PATIENCE = 60
# A shell starts programs in the background with this signal ignored, and a kernel would inherit that.
signal.signal(signal.SIGINT, signal.default_int_handler)
manager, client = start_new_kernel(kernel_name="strut-lessons", startup_timeout=PATIENCE)
facts = {}
everything = []


def published(request):
    """All messages that follow from a request, up to the one that says the kernel is idle again."""
    messages = []
    while True:
        message = client.get_iopub_msg(timeout=PATIENCE)
        if message["parent_header"].get("msg_id") != request:
            continue
        messages.append({"type": message["msg_type"], "content": message["content"]})
        if message["content"].get("execution_state") == "idle":
            everything.extend(messages)
            return messages


def reply(request):
    while True:
        message = client.get_shell_msg(timeout=PATIENCE)
        if message["parent_header"].get("msg_id") == request:
            return message["content"]


def run(code, **how):
    request = client.execute(code, **how)
    return {"published": published(request), "reply": reply(request)}


def wait_for(request, kind):
    while True:
        message = client.get_iopub_msg(timeout=PATIENCE)
        if message["parent_header"].get("msg_id") == request and message["msg_type"] == kind:
            return


info = client.kernel_info()
facts["info"] = reply(info)

# Cells and their outputs.
facts["result"] = run("6 * 7")
facts["streams"] = run('Console.Write("a");\nConsole.WriteLine("b");\nConsole.Error.Write("c");\n1')
facts["shown"] = run('var first = Show("one");\nfirst.Replace("two");\nAngleCatalogue.Find("L 80x80x8").Connected()')
facts["updated later"] = run('first.Replace("three");')
facts["chart"] = run('Chart.Of("A line", "x (m)", "y (m)").Line("y", [0, 1], [0, 1])')
facts["not understood"] = run("var a = 1;\nvar b = unknown;")
facts["thrown"] = run("var zero = 0;\n\n1 / zero")
facts["silent"] = run('Console.Write("unseen");\nvar quiet = 11;\nquiet', silent=True)
facts["after silent"] = run("quiet")
facts["not counted"] = run("1", store_history=False)
facts["expressions"] = run("var side = 3;", user_expressions={"double": "2 * side", "wrong": "nothing"})["reply"]
facts["own reference"] = run('#r "nuget: StrutLessons, 1.0"\n#r "../bin/StrutLessons.dll"\n\nnew Planar(3, 4).Length + none')
facts["own reference runs"] = run('#r "bin/StrutLessons.Notebook.dll"\nnew Planar(3, 4).Length')

# Cells sent together, the first of which fails.
for name, stop in (("stopped", True), ("not stopped", False)):
    requests = [client.execute(code, stop_on_error=stop) for code in ('System.Threading.Thread.Sleep(300); throw new Exception("x");', "1", "2")]
    facts[name] = [reply(request)["status"] for request in requests]
facts["after the stop"] = run("5")["reply"]["status"]


def ask(request):
    return reply(request)


# What an editor asks.
run("var arm = new Planar(1, 2);")
facts["completion"] = ask(client.complete("var n = arm.Le", 14))
facts["completion behind a long sign"] = ask(client.complete('var s = "𝜎"; arm.Le', 19))
facts["inspection"] = ask(client.inspect("Draw.Section", 12))
facts["inspection of a call"] = ask(client.inspect("AngleCatalogue.Find(", 20))
facts["inspection of nothing"] = ask(client.inspect("   ", 1))
facts["complete"] = {code: ask(client.is_complete(code)) for code in ("1 + 1", "if (true) {", "var x = ;")}
facts["history"] = ask(client.history(hist_access_type="tail", n=1, raw=True, output=False))
facts["search"] = ask(client.history(hist_access_type="search", pattern="var side*", n=5, raw=True, output=False))

# Live views over comm messages.
view = run('Live.Of(Slider.Of("Length", 1, 3, step: 1, start: 2, "m"), length => $"{10 * length} m")')
html = next(m for m in view["published"] if m["type"] == "execute_result")["content"]["data"]["text/html"]
live = re.search('data-live="([^"]+)"', html).group(1)


def comm(kind, content):
    message = client.session.msg(kind, content)
    client.shell_channel.send(message)
    return [m for m in published(message["header"]["msg_id"]) if m["type"].startswith("comm")]


facts["comm of another target"] = comm("comm_open", {"comm_id": "other", "target_name": "elsewhere", "data": {}})
facts["comm opened"] = comm("comm_open", {"comm_id": "mine", "target_name": "strutlessons.live", "data": {}})
facts["comm listed"] = ask(client.comm_info())["comms"]
facts["comm moved"] = comm("comm_msg", {"comm_id": "mine", "data": {"live": live, "positions": [3]}})
facts["comm refused"] = comm("comm_msg", {"comm_id": "mine", "data": {"live": live, "positions": [7]}})
facts["comm without positions"] = comm("comm_msg", {"comm_id": "mine", "data": {"live": live}})

# Signatures. A message signed with another key, then the same good message twice, over sockets of their own.
with open(manager.connection_file) as file:
    connection = json.load(file)


def shell_socket():
    socket = zmq.Context.instance().socket(zmq.DEALER)
    socket.linger = 0
    socket.connect(f"tcp://{connection['ip']}:{connection['shell_port']}")
    return socket


def answers(socket, patience):
    count = 0
    while socket.poll(patience):
        socket.recv_multipart()
        count += 1
    return count


forger = Session(key=b"another key", signature_scheme="hmac-sha256")
content = {"code": "var forged = 1;", "silent": False, "store_history": True, "user_expressions": {}, "allow_stdin": False}
socket = shell_socket()
forger.send(socket, "execute_request", content)
facts["answers to a forged message"] = answers(socket, 1500)
facts["forged code"] = run("forged")["reply"]

honest = Session(key=connection["key"].encode(), signature_scheme="hmac-sha256")
frames = honest.serialize(honest.msg("kernel_info_request", {}))
socket = shell_socket()
socket.send_multipart(frames)
socket.send_multipart(frames)
facts["answers to a message sent twice"] = answers(socket, 1500)

# Where the kernel listens.
process = manager.provisioner.process.pid


def listening(pid):
    inodes = set()
    for descriptor in os.listdir(f"/proc/{pid}/fd"):
        try:
            target = os.readlink(f"/proc/{pid}/fd/{descriptor}")
        except OSError:
            continue
        if target.startswith("socket:["):
            inodes.add(target[8:-1])
    found = []
    for table in ("tcp", "tcp6", "udp", "udp6"):
        with open(f"/proc/net/{table}") as file:
            for line in list(file)[1:]:
                column = line.split()
                if column[9] in inodes and column[3] in ("0A", "07"):
                    found.append(column[1].split(":")[0])
    return found


facts["listening"] = listening(process)
facts["messages"] = json.dumps(everything)

# An endless loop is interrupted by a message, and by a signal.
for name, interrupt in (("interrupt", manager.interrupt_kernel), ("signal", lambda: os.kill(process, signal.SIGINT))):
    run("var kept = 5;")
    request = client.execute('Console.Write("started");\nwhile (true) { }')
    wait_for(request, "stream")
    clock = time.time()
    interrupt()
    facts[name] = {"reply": reply(request), "seconds": time.time() - clock, "then": run("kept")["reply"]["status"]}

# A restart forgets what cells defined.
manager.restart_kernel(now=False)
client.wait_for_ready(timeout=PATIENCE)
facts["restarted"] = {"kept": run("kept")["reply"]["ename"], "count": run("1")["reply"]["execution_count"], "new process": manager.provisioner.process.pid != process}
clock = time.time()
process = manager.provisioner.process
client.stop_channels()
manager.shutdown_kernel(now=False)
facts["shut down"] = {"seconds": time.time() - clock, "exit code": process.poll()}
print(json.dumps(facts))
