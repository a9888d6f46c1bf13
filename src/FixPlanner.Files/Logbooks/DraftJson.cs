using System.Text.Json.Serialization;

namespace FixPlanner.Files.Logbooks;

[JsonSerializable(typeof(Dictionary<string, string>))]
internal sealed partial class DraftJson : JsonSerializerContext;
