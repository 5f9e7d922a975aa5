// SPDX-License-Identifier: Apache-2.0

// Sends every committed example through the generated Go client and holds what it read, written again, to the committed answer.
// Use: call URL FOLDER, where the folder holds the contract.
package main

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"openapi"
	"os"
	"path/filepath"
	"reflect"
	"strings"
)

type content map[string]struct {
	Schema struct {
		Ref string `json:"$ref"`
	} `json:"schema"`
}

// What is read of the contract.
type contract struct {
	Paths map[string]struct {
		Post *struct {
			OperationId string
			RequestBody struct{ Content content }
			Responses   map[string]struct{ Content content }
		}
	}
}

func main() {
	url, folder := os.Args[1], os.Args[2]
	configuration := openapi.NewConfiguration()
	configuration.Servers = openapi.ServerConfigurations{{URL: url}}
	api := openapi.NewAPIClient(configuration).CalculationAPI
	requests, _ := filepath.Glob(folder + "/examples/*.request.json")
	if len(requests) == 0 {
		fail("no example")
	}
	schemas := schemas(folder + "/openapi.json")
	for _, file := range requests {
		operation := strings.Split(filepath.Base(file), ".")[0]
		send(api, file, strings.ToUpper(operation[:1])+operation[1:], schemas[operation])
	}
	sendFault(api)
	fmt.Printf("the generated Go client got %d answers as committed\n", len(requests))
}

// Gives the names of the request and the answer of each operation.
func schemas(file string) map[string][2]string {
	var contract contract
	read(file, &contract)
	schemas := map[string][2]string{}
	name := func(content content) string { return filepath.Base(content["application/json"].Schema.Ref) }
	for _, path := range contract.Paths {
		if path.Post != nil {
			schemas[path.Post.OperationId] = [2]string{name(path.Post.RequestBody.Content), name(path.Post.Responses["200"].Content)}
		}
	}
	return schemas
}

func send(api *openapi.CalculationAPIService, file string, operation string, schemas [2]string) {
	call := reflect.ValueOf(api).MethodByName(operation).Call([]reflect.Value{reflect.ValueOf(context.Background())})[0]
	body := call.MethodByName(schemas[0])
	request := reflect.New(body.Type().In(0))
	read(file, request.Interface())
	result := body.Call([]reflect.Value{request.Elem()})[0].MethodByName("Execute").Call(nil)
	if err, failed := result[2].Interface().(error); failed {
		fail(file, err, string(problemOf(err).Body()))
	}
	if name := result[0].Type().Elem().Name(); name != schemas[1] {
		fail(file, "is read as", name)
	}
	written, err := json.Marshal(result[0].Interface())
	if err != nil {
		fail(file, err)
	}
	var expected, actual any
	read(strings.Replace(file, ".request.", ".response.", 1), &expected)
	if err := json.Unmarshal(written, &actual); err != nil || !reflect.DeepEqual(expected, actual) {
		fail(file, string(written))
	}
}

func sendFault(api *openapi.CalculationAPIService) {
	_, response, err := api.CompensateHardness(context.Background()).
		CompensatedHardnessRequest(openapi.CompensatedHardnessRequest{}).Execute()
	problem, read := problemOf(err).Model().(openapi.Problem)
	// What the contract requires is sent, here as an empty water.
	if !read || response.StatusCode != 422 || problem.Errors[0].Pointer != "/water/hardness" {
		fail("a request without water", err, problem)
	}
}

func problemOf(err error) *openapi.GenericOpenAPIError {
	problem := new(openapi.GenericOpenAPIError)
	errors.As(err, &problem)
	return problem
}

func read(file string, into any) {
	text, err := os.ReadFile(file)
	if err == nil {
		err = json.Unmarshal(text, into)
	}
	if err != nil {
		fail(file, err)
	}
}

func fail(reason ...any) {
	fmt.Fprintln(os.Stderr, reason...)
	os.Exit(1)
}
