// SPDX-License-Identifier: Apache-2.0

// A plain server on net/http and encoding/json that converts and compensates a hardness as the service does for the waters of the load:
// it checks the request against the same ranges, logs a line for each request, and compresses what is worth it. It listens where PORT says.
package main

import (
	"bytes"
	"compress/gzip"
	"encoding/json"
	"fmt"
	"log"
	"math"
	"net/http"
	"os"
	"strconv"
	"strings"
	"sync"
	"time"
)

const (
	carbonate = 40.078 + 12.011 + 3*15.999
	worth     = 1500
	version   = "2.3.0"
)

var (
	units   = []string{"mg/L", "gpg", "gpg-imperial", "dH", "fH", "mmol/L", "meq/L"}
	factors = map[string]float64{"mg/L": 1, "gpg": 64.79891 / 3.785411784, "gpg-imperial": 64.79891 / 4.54609,
		"dH": 10 * carbonate / (40.078 + 15.999), "fH": 10, "mmol/L": carbonate, "meq/L": carbonate / 2}
	sets = []set{{"stoichiometric", carbonate / 55.845, carbonate / 54.938}, grains("light", 2), grains("moderate", 3),
		grains("standard", 4), grains("conservative", 5)}
	spoken = map[string]string{"soft": "soft", "slightlyHard": "slightly hard", "moderatelyHard": "moderately hard", "medium": "medium",
		"hard": "hard", "veryHard": "very hard"}
	zippers = sync.Pool{New: func() any { return gzip.NewWriter(nil) }}
)

type set struct {
	name            string
	iron, manganese float64
}

type quantity struct {
	Value float64 `json:"value"`
	Unit  string  `json:"unit"`
}

type conversion struct {
	Hardness *quantity `json:"hardness"`
}

type compensation struct {
	Water struct {
		Hardness    *quantity `json:"hardness"`
		Uncertainty *quantity `json:"hardnessUncertainty"`
		Iron        *quantity `json:"iron"`
		Manganese   *quantity `json:"manganese"`
		Supply      string    `json:"supply"`
	} `json:"water"`
	Units string `json:"units"`
}

type classes struct {
	Usgs   string `json:"usgs"`
	German string `json:"german"`
	Trade  string `json:"trade"`
}

type converted struct {
	Summary      string     `json:"summary"`
	InEveryUnit  []quantity `json:"inEveryUnit"`
	Classes      classes    `json:"classes"`
	Cautions     []caution  `json:"cautions"`
	ModelVersion string     `json:"modelVersion"`
}

type lines struct {
	Tested      quantity   `json:"tested"`
	Iron        quantity   `json:"iron"`
	Manganese   quantity   `json:"manganese"`
	Compensated quantity   `json:"compensated"`
	Real        quantity   `json:"real"`
	Setting     quantity   `json:"controllerSetting"`
	Others      []quantity `json:"otherControllerSettings"`
}

type total struct {
	Set   string   `json:"set"`
	Total quantity `json:"total"`
}

type caution struct {
	Code     string `json:"code"`
	Severity string `json:"severity"`
	Message  string `json:"message"`
	Source   string `json:"source"`
	Reader   string `json:"reader"`
	InFront  bool   `json:"inFront"`
}

type compensated struct {
	Summary      string    `json:"summary"`
	Hardness     lines     `json:"hardness"`
	BySet        []total   `json:"bySet"`
	Cautions     []caution `json:"cautions"`
	ModelVersion string    `json:"modelVersion"`
}

func grains(name string, iron float64) set {
	gpg := 64.79891 / 3.785411784
	return set{name, iron * gpg, 2 * gpg}
}

// Rounds to significant digits.
func significant(value float64, digits int) float64 {
	rounded, _ := strconv.ParseFloat(strconv.FormatFloat(value, 'e', digits-1, 64), 64)
	return rounded
}

func in(unit string, mgPerL float64) quantity {
	return quantity{significant(mgPerL/factors[unit], 6), unit}
}

// A number with its unit in a sentence.
func said(value float64, unit string) string {
	if unit == "dH" {
		unit = "°dH"
	}
	return strconv.FormatFloat(value, 'f', -1, 64) + "\u00a0" + unit
}

func tenths(value float64) float64 {
	return math.Floor(value*10+0.5) / 10
}

func pick(value float64, ends []float64, names ...string) string {
	for i, end := range ends {
		if value <= end {
			return names[i]
		}
	}
	return names[len(ends)]
}

func classesOf(mgPerL float64) classes {
	german := "hard"
	if mmol := mgPerL / carbonate; mmol < 1.5 {
		german = "soft"
	} else if mmol <= 2.5 {
		german = "medium"
	}
	return classes{pick(mgPerL, []float64{60, 120, 180}, "soft", "moderatelyHard", "hard", "veryHard"), german,
		pick(mgPerL/factors["gpg"], []float64{1, 3.5, 7, 10.5}, "soft", "slightlyHard", "moderatelyHard", "hard", "veryHard")}
}

// In mg/L, or what is wrong with it.
func base(given *quantity, most float64, pointer string) (float64, error) {
	if given == nil {
		return 0, fmt.Errorf("%s is missing", pointer)
	}
	factor, known := factors[given.Unit]
	if !known {
		return 0, fmt.Errorf("%s/unit must be one of %s", pointer, strings.Join(units, ", "))
	}
	if !(given.Value >= 0 && given.Value*factor <= most) {
		return 0, fmt.Errorf("%s/value must be 0 to %g mg/L, was %g", pointer, most, given.Value)
	}
	return given.Value * factor, nil
}

func convert(body *json.Decoder) (any, error) {
	var request conversion
	if err := body.Decode(&request); err != nil {
		return nil, err
	}
	mgPerL, err := base(request.Hardness, 10_000, "/hardness")
	if err != nil {
		return nil, err
	}
	every := make([]quantity, len(units))
	for i, unit := range units {
		every[i] = in(unit, mgPerL)
	}
	class := classesOf(mgPerL)
	summary := fmt.Sprintf("%s is %s as CaCO3 (%s): %s water by the US Geological Survey. The trade calls it %s, and the German "+
		"detergents act calls it %s.", said(request.Hardness.Value, request.Hardness.Unit), said(math.Floor(mgPerL+0.5), "mg/L"),
		said(tenths(mgPerL/factors["dH"]), "dH"), spoken[class.Usgs], spoken[class.Trade], spoken[class.German])
	return converted{summary, every, class, []caution{}, version}, nil
}

func setting(mgPerL float64, unit string) quantity {
	return quantity{math.Ceil(mgPerL / factors[unit] * (1 - 1e-5)), unit}
}

// A line of the sum in grains, to a tenth, or a digit where that would be none.
func line(mgPerL float64) string {
	value := in("gpg", mgPerL).Value
	if value > 0 && value < 0.05 {
		return said(significant(value, 1), "gpg")
	}
	return said(tenths(value), "gpg")
}

func compensate(body *json.Decoder) (any, error) {
	var request compensation
	if err := body.Decode(&request); err != nil {
		return nil, err
	}
	water := request.Water
	var values [4]float64
	for i, each := range []struct {
		given *quantity
		most  float64
		name  string
	}{{water.Hardness, 10_000, "hardness"}, {water.Uncertainty, 500, "hardnessUncertainty"}, {water.Iron, 100, "iron"},
		{water.Manganese, 50, "manganese"}} {
		var err error
		if values[i], err = base(each.given, each.most, "/water/"+each.name); err != nil {
			return nil, err
		}
	}
	if water.Supply != "privateWell" || request.Units != "us" {
		return nil, fmt.Errorf("/water/supply must be privateWell and /units us")
	}
	hardness, uncertainty, iron, manganese := values[0], values[1], values[2], values[3]
	standard := sets[3]
	sum := hardness + standard.iron*iron + standard.manganese*manganese
	bySet := make([]total, len(sets))
	for i, each := range sets {
		bySet[i] = total{each.name, in("gpg", hardness+each.iron*iron+each.manganese*manganese)}
	}
	set := setting(sum+uncertainty, "gpg")
	rounded := ""
	if significant(set.Value, 4) > significant((sum+uncertainty)/factors["gpg"], 4) {
		rounded = " The setting is rounded up."
	}
	summary := fmt.Sprintf("Set the hardness to %s. The test gives %s. Iron adds %s and manganese %s, which makes %s.%s The setting also "+
		"covers the uncertainty of the test.", said(set.Value, "gpg"), line(hardness), line(standard.iron*iron),
		line(standard.manganese*manganese), line(sum), rounded)
	return compensated{summary, lines{in("gpg", hardness), in("gpg", standard.iron*iron), in("gpg", standard.manganese*manganese),
		in("gpg", sum), bySet[0].Total, set, []quantity{setting(sum+uncertainty, "dH"), setting(sum+uncertainty, "fH")}},
		bySet, cautions(iron, manganese), version}, nil
}

func cautions(iron, manganese float64) []caution {
	all := []caution{{"wellWithoutBacteriaTest", "warning", "The private well has no bacteria test. A softener does not disinfect. Have " +
		"the well tested for bacteria.", "University of Nebraska-Lincoln Extension NebGuide G1491 (2014)", "customer", true}}
	if iron+manganese >= 1 {
		all = append(all, caution{"ironBeforeResin", "warning", "Iron and manganese together are 1\u00a0mg/L or more and foul the resin. " +
			"Plan treatment or resin cleaning.", "Illinois Administrative Code title 35 part 604.805 (2019)", "installer", true})
	}
	if iron > 0.3 {
		all = append(all, stains("iron", "Iron", "0.3"))
	}
	if manganese > 0.05 {
		all = append(all, stains("manganese", "Manganese", "0.05"))
	}
	return all
}

func stains(code, name, limit string) caution {
	return caution{code + "Stains", "info", name + " is above " + limit + "\u00a0mg/L. It can stain laundry and fixtures.",
		"40 CFR 143.3, national secondary drinking water regulations (2023)", "customer", true}
}

func answer(calculate func(*json.Decoder) (any, error)) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		began := time.Now()
		body := json.NewDecoder(r.Body)
		body.DisallowUnknownFields()
		result, err := calculate(body)
		status := http.StatusOK
		if err != nil {
			status, result = http.StatusUnprocessableEntity, map[string]string{"title": "invalid", "detail": err.Error()}
		}
		var text bytes.Buffer
		encoder := json.NewEncoder(&text)
		encoder.SetEscapeHTML(false)
		if err := encoder.Encode(result); err != nil {
			panic(err)
		}
		whole := bytes.TrimSuffix(text.Bytes(), []byte("\n"))
		header := w.Header()
		header.Set("Content-Type", "application/json")
		header.Set("Vary", "Accept-Encoding")
		if len(whole) >= worth && strings.Contains(r.Header.Get("Accept-Encoding"), "gzip") {
			whole = zip(whole)
			header.Set("Content-Encoding", "gzip")
		}
		header.Set("Content-Length", strconv.Itoa(len(whole)))
		w.WriteHeader(status)
		w.Write(whole)
		log.Printf(`{"method":%q,"route":%q,"status":%d,"milliseconds":%.3f}`, r.Method, r.URL.Path, status,
			float64(time.Since(began).Microseconds())/1000)
	}
}

func zip(whole []byte) []byte {
	var short bytes.Buffer
	zipper := zippers.Get().(*gzip.Writer)
	zipper.Reset(&short)
	zipper.Write(whole)
	zipper.Close()
	zippers.Put(zipper)
	return short.Bytes()
}

func main() {
	http.HandleFunc("/health/ready", func(w http.ResponseWriter, r *http.Request) {})
	http.HandleFunc("/v1/hardness-conversion", answer(convert))
	http.HandleFunc("/v1/compensated-hardness", answer(compensate))
	log.Fatal(http.ListenAndServe("127.0.0.1:"+os.Getenv("PORT"), nil))
}
