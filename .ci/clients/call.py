# SPDX-License-Identifier: Apache-2.0
"""Sends every committed example through the generated Python client and holds what it read, written again, to the committed
answer. Use: python3 call.py URL FOLDER, where the folder holds the contract and the client is on the path."""
import json
import re
import sys
from pathlib import Path

import openapi_client
from openapi_client.exceptions import ApiException

url, folder = sys.argv[1], Path(sys.argv[2])
calculation = openapi_client.CalculationApi(openapi_client.ApiClient(openapi_client.Configuration(host=url)))


def read(file):
    return json.loads(file.read_text())


def schema(content):
    return content["application/json"]["schema"]["$ref"].split("/")[-1]


operations = {item["post"]["operationId"]: item["post"] for item in read(folder / "openapi.json")["paths"].values() if "post" in item}
requests = sorted(folder.glob("examples/*.request.json"))
assert requests, "no example"
for file in requests:
    operation = file.name.split(".")[0]
    request = getattr(openapi_client, schema(operations[operation]["requestBody"]["content"])).from_dict(read(file))
    answer = getattr(calculation, re.sub("[A-Z]", lambda capital: "_" + capital[0].lower(), operation))(request)
    assert type(answer).__name__ == schema(operations[operation]["responses"]["200"]["content"]), f"{file}: {type(answer)}"
    committed = read(Path(str(file).replace(".request.", ".response.")))
    assert json.loads(answer.to_json()) == committed, f"{file}: {answer.to_json()}"
try:
    calculation.compensate_hardness(openapi_client.CompensatedHardnessRequest.model_construct(water=None))
    sys.exit("a request without water was answered")
except ApiException as e:
    assert (e.status, openapi_client.Problem.from_json(e.body).errors[0].pointer) == (422, "/water"), e
print(f"the generated Python client got {len(requests)} answers as committed")
