/* check_schema.c - the JSON Schema of `check --json` (room: app). Describes what
 * check_json.c writes; the tests hold one against the other. */
#include "check_rows.h"

#include <stdio.h>

static const char head[] =
    "{\n"
    "  \"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n"
    "  \"title\": \"maydeck check --json\",\n"
    "  \"type\": \"object\",\n"
    "  \"additionalProperties\": false,\n"
    "  \"required\": [\"format\", \"base\", \"date\", \"from\", \"to\", \"boats\", \"problems\"],\n"
    "  \"properties\": {\n"
    "    \"format\": {\"const\": \"maydeck-check-1\"},\n"
    "    \"base\": {\"type\": \"string\", \"description\": \"the folder as it was named\"},\n"
    "    \"date\": {\"$ref\": \"#/$defs/day\", \"description\": \"today\"},\n"
    "    \"from\": {\"$ref\": \"#/$defs/day\", \"description\": \"first day of the charter\"},\n"
    "    \"to\": {\"$ref\": \"#/$defs/day\", \"description\": \"its last day\"},\n"
    "    \"boats\": {\"type\": \"array\", \"items\": {\"$ref\": \"#/$defs/boat\"}},\n"
    "    \"problems\": {\"$ref\": \"#/$defs/problems\",\n"
    "      \"description\": \"those of the run and of the base, of no one boat\"}\n"
    "  },\n"
    "  \"$defs\": {\n"
    "    \"day\": {\"type\": \"string\", \"pattern\": \"^[0-9]{4}-[0-9]{2}-[0-9]{2}$\"},\n"
    "    \"count\": {\"type\": \"integer\", \"minimum\": 0},\n";

static const char boat[] =
    "    \"boat\": {\n"
    "      \"type\": \"object\",\n"
    "      \"additionalProperties\": false,\n"
    "      \"required\": [\"boat\", \"read\", \"recorded\", \"items\", \"cards\", \"counts\",\n"
    "        \"first_date\", \"not_hers\", \"problems\"],\n"
    "      \"properties\": {\n"
    "        \"boat\": {\"type\": \"string\",\n"
    "          \"description\": \"her file's name without .yaml\"},\n"
    "        \"read\": {\"type\": \"boolean\", \"description\": \"her file could be used\"},\n"
    "        \"recorded\": {\"$ref\": \"#/$defs/count\",\n"
    "          \"description\": \"kinds of gear that her record mentions\"},\n"
    "        \"items\": {\"$ref\": \"#/$defs/count\",\n"
    "          \"description\": \"kinds of gear there are\"},\n"
    "        \"cards\": {\"type\": \"object\", \"additionalProperties\": false,\n"
    "          \"required\": [\"ready\", \"of\"],\n"
    "          \"properties\": {\"ready\": {\"$ref\": \"#/$defs/count\"},\n"
    "            \"of\": {\"$ref\": \"#/$defs/count\"}}},\n"
    "        \"counts\": {\"type\": \"object\", \"additionalProperties\": false,\n"
    "          \"required\": [\"error\", \"held\", \"deficiency\", \"note\", \"silenced\"],\n"
    "          \"properties\": {\"error\": {\"$ref\": \"#/$defs/count\"},\n"
    "            \"held\": {\"$ref\": \"#/$defs/count\"},\n"
    "            \"deficiency\": {\"$ref\": \"#/$defs/count\"},\n"
    "            \"note\": {\"$ref\": \"#/$defs/count\"},\n"
    "            \"silenced\": {\"$ref\": \"#/$defs/count\"}}},\n"
    "        \"first_date\": {\"description\": \"the first date of her gear to run out\",\n"
    "          \"anyOf\": [{\"type\": \"null\"}, {\"type\": \"object\",\n"
    "            \"additionalProperties\": false, \"required\": [\"date\", \"item\", \"tag\"],\n"
    "            \"properties\": {\n"
    "              \"date\": {\"type\": \"string\", \"pattern\": \"^[0-9]{4}(-[0-9]{2}){0,2}$\"},\n"
    "              \"item\": {\"type\": \"string\"},\n"
    "              \"tag\": {\"type\": [\"string\", \"null\"]}}}]},\n"
    "        \"not_hers\": {\"type\": \"array\", \"items\": {\"type\": \"object\",\n"
    "          \"additionalProperties\": false, \"required\": [\"card\", \"reason\"],\n"
    "          \"properties\": {\"card\": {\"type\": \"string\"},\n"
    "            \"reason\": {\"type\": [\"string\", \"null\"]}}}},\n"
    "        \"problems\": {\"$ref\": \"#/$defs/problems\"}\n"
    "      }\n"
    "    },\n";

static const char problem[] =
    "    \"problems\": {\"type\": \"array\", \"items\": {\n"
    "      \"type\": \"object\",\n"
    "      \"additionalProperties\": false,\n"
    "      \"required\": [\"check\", \"severity\", \"file\", \"line\", \"column\", \"what\",\n"
    "        \"remedy\"],\n"
    "      \"properties\": {\n"
    "        \"check\": {\"enum\": [";

static const char tail[] =
    "]},\n"
    "        \"severity\": {\"enum\": [\"silenced\", \"note\", \"deficiency\", \"held\",\n"
    "          \"error\", \"failure\"]},\n"
    "        \"file\": {\"type\": [\"string\", \"null\"]},\n"
    "        \"line\": {\"type\": [\"integer\", \"null\"], \"minimum\": 1},\n"
    "        \"column\": {\"type\": [\"integer\", \"null\"], \"minimum\": 1},\n"
    "        \"what\": {\"type\": \"string\", \"minLength\": 1},\n"
    "        \"remedy\": {\"type\": [\"string\", \"null\"]}\n"
    "      }\n"
    "    }}\n"
    "  }\n"
    "}\n";

void check_schema_print(void)
{
    fputs(head, stdout);
    fputs(boat, stdout);
    fputs(problem, stdout);
    for (size_t i = 0; check_at(i) != NULL; i++)
        printf("%s\n          \"%s\"", i == 0 ? "" : ",", check_at(i)->id);
    fputs(tail, stdout);
}
