using System.Globalization;
using HingeSelector.Body;
using HingeSelector.Quantities;
using HingeSelector.Statics;
using YamlDotNet.RepresentationModel;

namespace HingeSelector.Tests.Body;

/// <summary>Reads rules/model.yaml the plain way, independently of the product's own reader.</summary>
internal static class ModelFile
{
    private static readonly YamlMappingNode Root = Load();

    public static string RepositoryRoot { get; } = FindRoot();

    public static ModelParameters Parameters { get; } = new(Root["parameters"].Sequence().ToDictionary(
        p => p.Text("parameter"),
        p =>
        {
            var range = p.Text("range").Split(" to ");
            return new ParameterValue(Number(p.Text("default")), Number(range[0]), Number(range[1]));
        }));

    public static SurveyTable Survey { get; } = new(
        Number(Root["survey"].Text("ages").Split(" to ")[0]) / Unit.Find("years")!.Factor,
        Number(Root["survey"].Text("ages").Split(" to ")[1]) / Unit.Find("years")!.Factor,
        OneSex("female"),
        OneSex("male"));

    public static MassTablePair Masses(string id)
    {
        var table = Root["mass-tables"].Sequence().Single(t => t.Text("table") == id);
        return new MassTablePair(id, Table(table.Map("female")), Table(table.Map("male")));
    }

    public static IEnumerable<YamlMappingNode> ParameterNodes => Root["parameters"].Sequence();

    /// <summary>A value with its unit, in the base unit.</summary>
    public static double Number(string text)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        var number = double.Parse(space < 0 ? text : text[..space], CultureInfo.InvariantCulture);
        return space < 0 ? number : number * Unit.Find(text[(space + 1)..])!.Factor;
    }

    private static MassTable Table(YamlMappingNode node) => new()
    {
        TrunkAndHead = Share(node, "trunk-and-head"),
        Pelvis = Share(node, "pelvis"),
        Arm = Share(node, "arm"),
        Thigh = Share(node, "thigh"),
        Shank = Share(node, "shank"),
        Foot = Share(node, "foot"),
    };

    private static MassShare Share(YamlMappingNode node, string part)
        => new(Number(node.Map(part).Text("share")), Number(node.Map(part).Text("centre")));

    private static SexSurvey OneSex(string sex)
    {
        var node = Root["survey"].Map(sex);
        var statures = node.Text("statures").Split(" to ");
        return new SexSurvey(
            Length.FromMetres(Number(statures[0])),
            Length.FromMetres(Number(statures[1])),
            node["ratios"].Sequence().ToDictionary(r => Name(r.Text("segment")), r => new SurveyRatio(Number(r.Text("mean")), Number(r.Text("sd")))),
            node["correlations"].Sequence().ToDictionary(
                c => new SegmentPair(Name(((YamlSequenceNode)c["between"])[0].ToString()), Name(((YamlSequenceNode)c["between"])[1].ToString())),
                c => Number(c.Text("r"))));
    }

    private static SegmentName Name(string id) => Enum.Parse<SegmentName>(id.Replace("-", "", StringComparison.Ordinal), ignoreCase: true);

    private static YamlMappingNode Load()
    {
        using var reader = new StreamReader(Path.Combine(FindRoot(), "rules", "model.yaml"));
        var yaml = new YamlStream();
        yaml.Load(reader);
        return (YamlMappingNode)yaml.Documents[0].RootNode;
    }

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "HingeSelector.sln")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("HingeSelector.sln is not above the tests.");
        return folder;
    }

    private static string Text(this YamlNode node, string key) => node[key].ToString();

    private static YamlMappingNode Map(this YamlNode node, string key) => (YamlMappingNode)node[key];

    private static IEnumerable<YamlMappingNode> Sequence(this YamlNode node) => ((YamlSequenceNode)node).Cast<YamlMappingNode>();
}
