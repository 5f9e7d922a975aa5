<?php
// SPDX-License-Identifier: Apache-2.0
// Sends every committed example through the generated PHP client and holds what it read, written again, to the committed
// answer. Use: php call.php URL FOLDER CLIENT, where the folder holds the contract.
use OpenAPI\Client\ApiException;
use OpenAPI\Client\Configuration;
use OpenAPI\Client\Api\CalculationApi;
use OpenAPI\Client\Model\CompensatedHardnessRequest;
use OpenAPI\Client\Model\Problem;
use OpenAPI\Client\ObjectSerializer;

[, $url, $folder, $client] = $argv;
set_error_handler(fn ($severity, $message, $file, $line) => throw new ErrorException($message, 0, $severity, $file, $line));
require 'GuzzleHttp/autoload.php';
spl_autoload_register(function ($class) use ($client) {
    $file = "$client/lib/" . strtr(substr($class, 15), '\\', '/') . '.php';
    if (str_starts_with($class, 'OpenAPI\Client\\') && is_file($file)) { // the client asks for classes that are none
        require $file;
    }
});

$read = fn ($file) => json_decode(file_get_contents($file), flags: JSON_THROW_ON_ERROR);
$schema = fn ($content) => 'OpenAPI\Client\Model\\' . basename($content->{'application/json'}->schema->{'$ref'});
// The order of the properties does not count.
$plain = function ($value) use (&$plain) {
    if (is_object($value)) {
        $value = get_object_vars($value);
        ksort($value);
        return (object) array_map($plain, $value);
    }
    return is_array($value) ? array_map($plain, $value) : (is_int($value) ? (float) $value : $value);
};

ObjectSerializer::setDateTimeFormat('Y-m-d'); // lists of dates are written as times by default
$calculation = new CalculationApi(config: (new Configuration())->setHost($url));
$operations = [];
foreach ($read("$folder/openapi.json")->paths as $path) {
    if (isset($path->post)) {
        $operations[$path->post->operationId] = $path->post;
    }
}
$requests = glob("$folder/examples/*.request.json") ?: exit('no example');
foreach ($requests as $file) {
    $operation = explode('.', basename($file))[0];
    $request = ObjectSerializer::deserialize($read($file), $schema($operations[$operation]->requestBody->content));
    $answer = $calculation->$operation($request);
    if (!is_a($answer, $schema($operations[$operation]->responses->{'200'}->content))) {
        throw new Exception("$file: " . get_debug_type($answer));
    }
    $written = json_encode($plain(json_decode(json_encode($answer))));
    $committed = json_encode($plain($read(str_replace('.request.', '.response.', $file))));
    if ($written !== $committed) {
        throw new Exception("$file: $written instead of $committed");
    }
}
try {
    $calculation->compensateHardness(new CompensatedHardnessRequest());
    throw new Exception('a request without water was answered');
} catch (ApiException $e) {
    $problem = $e->getResponseObject();
    if ($e->getCode() !== 422 || !$problem instanceof Problem || $problem->getErrors()[0]->getPointer() !== '/water') {
        throw $e;
    }
}
echo 'the generated PHP client got ', count($requests), " answers as committed\n";
