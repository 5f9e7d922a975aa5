# Reads the metrics by another's strict parsers, in both formats: python3 metrics.py <address of /metrics>
# SPDX-License-Identifier: Apache-2.0
import sys
import urllib.request

from prometheus_client.openmetrics.parser import text_string_to_metric_families as open_metrics
from prometheus_client.parser import text_string_to_metric_families as prometheus_text


def scraped(accept, parse):
    request = urllib.request.Request(sys.argv[1], headers={"Accept": accept})
    with urllib.request.urlopen(request) as response:
        assert response.headers["Content-Type"].startswith(accept), response.headers["Content-Type"]
        return {family.name: family for family in parse(response.read().decode())}


text = scraped("text/plain", prometheus_text)
openly = scraped("application/openmetrics-text", open_metrics)
# OpenMetrics names a family of the type info without its suffix.
assert {name.removesuffix("_info") for name in text} == set(openly), set(text) ^ set(openly)
requests = openly["http_server_requests_seconds"]
assert requests.type == "histogram" and requests.unit == "seconds", requests
exemplars = [sample.exemplar for sample in requests.samples if sample.exemplar]
assert exemplars and all(len(each.labels["trace_id"]) == 32 for each in exemplars), "no exemplar"
bounds = {float(sample.labels["le"]) for sample in requests.samples if sample.name.endswith("_bucket")}
assert 10.0 in bounds, bounds
assert any(sample.labels["operation"] for sample in openly["bulk_lines"].samples)
for name in ("bulk_line_duration_seconds", "agent_call_duration_seconds"):
    durations = openly.get(name)
    if durations is None and name.startswith("agent"):  # no agent has asked yet
        continue
    assert durations.type == "histogram" and durations.unit == "seconds", durations
    own = {float(sample.labels["le"]) for sample in durations.samples if sample.name.endswith("_bucket")}
    assert own == bounds, own
assert any(sample.labels["operation"] for sample in openly["bulk_line_duration_seconds"].samples)
processor = openly["process_cpu_seconds"]
assert processor.type == "counter" and processor.samples[0].value > 0.1, processor
assert not [name for name in text if name.endswith("_ns")], "nanoseconds"
print(f"{len(text)} families of metrics, {len(exemplars)} exemplars, in both formats")
