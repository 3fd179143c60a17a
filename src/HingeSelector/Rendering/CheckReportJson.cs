using System.Text.Json.Serialization;

namespace HingeSelector.Rendering;

/// <summary>Writes check reports without looking at types at run time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, NewLine = "\n")]
[JsonSerializable(typeof(CheckReport))]
internal sealed partial class CheckReportJson : JsonSerializerContext;
