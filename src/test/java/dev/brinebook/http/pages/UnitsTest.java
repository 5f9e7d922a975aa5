// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.Served;
import io.restassured.config.JsonConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.path.json.config.JsonPathConfig;
import io.restassured.response.Response;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The units that the service states for machines. */
class UnitsTest {

    /** Factors by definition: NIST SP 811 (grain, gallon, pound, inch, foot), UK Weights and Measures Act 1985; codes by UCUM 2.1. */
    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
            hardness,    gpg,    [gr]/[gal_us], 17.11806104527095, -,  mg/L
            hardness,    fH,     -,             10,                 -,  mg/L
            volume,      gal,    [gal_us],      3.785411784,        -,  L
            mass,        lb,     [lb_av],       0.45359237,         -,  kg
            length,      in,     [in_i],        0.0254,             -,  m
            area,        ft2,    [sft_i],       0.09290304,         -,  m2
            capacity,    gr,     [gr],          0.06479891,         -,  g
            volume,      ft3,    [cft_i],       28.316846592,       -,  L
            volume,      gal-imperial, [gal_br], 4.54609,           -,  L
            surfaceFlow, gpm/ft2, [gal_us]/min/[sft_i], 2.44475,    -,  m/h
            temperature, F,      [degF],        0.5555555555555556, 32, C
            """)
    void statesTheFactorOfEachUnit(String kind, String symbol, String ucum, BigDecimal factor, BigDecimal zero, String base) {
        Response units = units();
        Map<String, Object> found = units.path("kinds.find { it.kind == '" + kind + "' }.units.find { it.symbol == '" + symbol + "' }");
        assertEquals(ucum, found.get("ucum"));
        assertEquals(0, factor.compareTo(new BigDecimal(found.get("factor").toString())), found + "");
        assertEquals(zero == null ? null : zero.toString(), found.get("zero") == null ? null : found.get("zero").toString());
        units.then().body("kinds.find { it.kind == '" + kind + "' }.baseUnit", equalTo(base));
    }

    @Test
    void mayBeKeptLikeTheRegisterOfSources() {
        Response units = Served.given().get("/v1/units");
        units.then().statusCode(200).header("ETag", notNullValue()).header("Cache-Control", startsWith("public"));
        Served.given().header("If-None-Match", units.header("ETag"))
                .get("/v1/units").then().statusCode(304);
        List<String> kinds = units.path("kinds.kind");
        assertEquals(kinds.stream().sorted().toList(), kinds);
        assertEquals(17, kinds.size(), kinds.toString());
    }

    /** Decimals as they are written, to the last digit. */
    private static Response units() {
        return Served.given().config(RestAssuredConfig.config().jsonConfig(JsonConfig.jsonConfig()
                .numberReturnType(JsonPathConfig.NumberReturnType.BIG_DECIMAL))).get("/v1/units");
    }
}
