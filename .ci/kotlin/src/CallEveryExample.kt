// SPDX-License-Identifier: Apache-2.0
import com.google.gson.JsonElement
import com.google.gson.JsonParser
import java.io.File
import java.lang.reflect.ParameterizedType
import org.openapitools.client.apis.CalculationApi
import org.openapitools.client.infrastructure.ApiClient
import org.openapitools.client.infrastructure.Serializer
import org.openapitools.client.infrastructure.getErrorResponse
import org.openapitools.client.models.CompensatedHardnessRequest
import org.openapitools.client.models.Problem
import org.openapitools.client.models.WaterRequest
import retrofit2.Call

private val gson = Serializer.gsonBuilder.create()

/**
 * Sends every committed example through the generated Kotlin client and holds what it read, written again, to the committed
 * answer. Use: CallEveryExample URL FOLDER, where the folder holds the contract.
 */
fun main(arguments: Array<String>) {
    val calculation = ApiClient(arguments[0]).createService(CalculationApi::class.java)
    val requests = File(arguments[1], "examples").listFiles { file -> file.name.endsWith(".request.json") }.orEmpty()
    check(requests.isNotEmpty()) { "no example" }
    for (file in requests) {
        val committed = read(File(file.path.replace(".request.", ".response.")))
        val written = send(calculation, file)
        check(written == committed) { "$file: $written" }
    }
    sendFault(calculation)
    println("the generated Kotlin client got ${requests.size} answers as committed")
}

/** Gives what was read of the answer to a file, written again. */
private fun send(calculation: CalculationApi, file: File): JsonElement {
    val method = CalculationApi::class.java.methods.single { it.name == file.name.substringBefore('.') }
    val arguments = arrayOfNulls<Any>(method.parameterCount)
    arguments[0] = gson.fromJson(read(file), method.parameterTypes[0])
    val response = (method.invoke(calculation, *arguments) as Call<*>).execute()
    val answer = checkNotNull(response.body()) { "$file: ${response.errorBody()?.string()}" }
    val type = (method.genericReturnType as ParameterizedType).actualTypeArguments[0]
    check(answer.javaClass == type) { "$file: ${answer.javaClass}" }
    return gson.toJsonTree(answer)
}

private fun sendFault(calculation: CalculationApi) {
    val response = calculation.compensateHardness(CompensatedHardnessRequest(water = WaterRequest())).execute()
    val problem = response.getErrorResponse<Problem>()
    check(response.code() == 422 && problem?.errors?.first()?.pointer == "/water/hardness") { "a request without water: $problem" }
}

private fun read(file: File) = file.reader().use { JsonParser.parseReader(it) }
