"""The fleet on a Dask cluster of several processes over columnar files: progress, a killed worker started again, bounded memory."""
import os
import signal
import sys
import time
import warnings

import in_numpy


def audit(folder, register, block, workers, kill_one=False, say=print):
    """(sums, seconds, greatest memory of a worker in MiB).

    kill_one: kills a worker in the midst of the work, to show that nothing is lost.
    """
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # the libraries' own
        import dask
        from distributed import Client, LocalCluster, as_completed
    dask.config.set({"distributed.scheduler.allowed-failures": 5, "distributed.worker.daemon": True})
    blocks = [register[i:i + block] for i in range(0, len(register), block)]
    settings = {"threads_per_worker": 1, "memory_limit": "1GiB", "dashboard_address": None, "silence_logs": 50}
    with LocalCluster(n_workers=workers, **settings) as cluster, Client(cluster) as client:
        client.run(_ready, sys.path)
        begun = time.perf_counter()
        futures = {client.submit(in_numpy.block_sums, str(folder), i, members, pure=False, retries=5): i
                   for i, members in enumerate(blocks)}
        parts, told, killed = {}, begun, False
        for future in as_completed(futures):
            parts[futures[future]] = future.result()
            if kill_one and len(parts) >= 1:
                kill_one, killed = False, True
                victim = next(iter(client.run(os.getpid).values()))
                os.kill(victim, signal.SIGKILL)
                say(f"   killed worker {victim} after block {len(parts)} of {len(blocks)}")
            future.release()
            if time.perf_counter() - told > 2 or len(parts) == len(blocks):
                told = time.perf_counter()
                say(f"   {len(parts)} of {len(blocks)} blocks after {told - begun:.1f} s")
        took = time.perf_counter() - begun
        client.wait_for_workers(workers, timeout=60)
        if killed:
            say(f"   workers now: {', '.join(str(pid) for pid in client.run(os.getpid).values())}; nothing was lost")
        memory = max(client.run(_greatest_memory).values())
    return in_numpy.joined([parts[i] for i in range(len(blocks))]), took, memory


def _ready(path):
    """A worker finds what this process finds, and has imported it before the clock starts."""
    sys.path[:] = path
    import cutwater
    import in_numpy as kernel
    return cutwater.__name__ + kernel.__name__


def _greatest_memory():
    import resource
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
