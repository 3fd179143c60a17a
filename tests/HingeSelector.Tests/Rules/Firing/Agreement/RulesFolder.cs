using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Tests.Rules.Firing.Agreement;

/// <summary>The shipped rules, and the same folder with other topics in it.</summary>
internal static class RulesFolder
{
    private static readonly Lazy<RuleFiles> _shipped = new(() => RuleFiles.FromFolder(Find()));

    /// <summary>The shipped files.</summary>
    public static RuleFiles Shipped => _shipped.Value;

    /// <summary>Vocabulary, variants and all else as shipped, but only the given topic files, and no philosophy that changes rules of others.</summary>
    public static RuleFiles WithTopics(params (string Path, string Text)[] topics)
    {
        var texts = Shipped.Texts
            .Where(t => !IsTopic(t.Key) && (!t.Key.StartsWith("philosophies/", StringComparison.Ordinal) || t.Key == "philosophies/balanced.yaml"))
            .ToDictionary(t => t.Key, t => t.Value, StringComparer.Ordinal);
        foreach (var (path, text) in topics)
            texts[path] = text;
        return new RuleFiles(texts);
    }

    /// <summary>The shipped folder with at most so many rules: findings first, then file after file.</summary>
    public static RuleFiles Part(int rules)
    {
        var topics = new List<(string, string)>();
        foreach (var (path, text) in Shipped.Texts.Where(t => IsTopic(t.Key)).OrderBy(t => !t.Key.StartsWith("findings/", StringComparison.Ordinal)).ThenBy(t => t.Key, StringComparer.Ordinal))
        {
            var count = text.Split("- rule: ").Length - 1;
            if (count > rules)
                continue;
            rules -= count;
            topics.Add((path, text));
        }
        return WithTopics([.. topics]);
    }

    private static bool IsTopic(string path)
        => path.Contains('/') && !path.StartsWith("variants/", StringComparison.Ordinal) && !path.StartsWith("philosophies/", StringComparison.Ordinal);

    /// <summary>The book of some files. Whether its rules are wise is for other tests; here it only has to be complete.</summary>
    public static RuleBook Book(RuleFiles files)
    {
        var bag = new DiagnosticBag();
        return RuleBookReader.Read(files, bag) ?? throw new FaultyFilesException(bag.Sorted);
    }

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var rules = Path.Combine(folder.FullName, "rules");
            if (File.Exists(Path.Combine(rules, "vocabulary.yaml")))
                return rules;
        }
        throw new DirectoryNotFoundException("No folder upwards holds rules/vocabulary.yaml.");
    }
}
