using HingeSelector.Diagnostics;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Support;
using HingeSelector.Words;

namespace HingeSelector.Tests.Rules;

/// <summary>Slips of one or two letters in every name that staff type.</summary>
public sealed class NearestNameTests
{
    private const int Slips = 2000;

    private static readonly string[] _keys = ["rule", "when", "then", "because", "grade", "disputed", "sources", "tries", "accepts"];
    private static readonly string[] _grades = ["trial", "laboratory", "mechanics", "consensus", "practice"];

    /// <summary>Lists of names that can stand in one place.</summary>
    private static readonly IReadOnlyList<string>[] _lists =
    [
        [.. RepositoryFiles.Book.Vocabulary.Ids, .. RepositoryFiles.Book.Findings.Select(f => f.Id)],
        [.. RepositoryFiles.Book.Sources.Keys],
        [.. RepositoryFiles.Book.Variants.Select(v => v.Id)],
        [.. RepositoryFiles.Book.Criteria.Select(c => c.Id)],
        [.. RequestedChange.Words.Keys],
        .. RequestedChange.Words.Values.Where(w => w.Count > 1),
        CueAsks.All,
        _keys,
        _grades,
        Sides.Names,
        .. RepositoryFiles.Book.Vocabulary.Words.Where(w => w.Values.Count > 2).Select(w => w.Values),
    ];

    [Fact]
    public void Ninety_seven_of_a_hundred_slips_are_offered_the_right_name_first()
    {
        var random = new Random(20261124);
        var names = _lists.SelectMany(l => l.Select(n => (Name: n, List: l))).ToList();
        var (right, tried, wrong) = (0, 0, new List<string>());
        while (tried < Slips)
        {
            var (name, list) = names[random.Next(names.Count)];
            var typed = Slip(Slip(name, random), random, random.Next(2) == 0);
            // A slip that makes another name, or leaves nothing, cannot be told from what was meant.
            if (list.Contains(typed) || typed.Length == 0)
                continue;
            tried++;
            if (NearestName.Find(typed, list) == name)
                right++;
            else
                wrong.Add($"{typed} for {name}");
        }
        ((double)right / tried).ShouldBeGreaterThanOrEqualTo(0.97, string.Join(", ", wrong.Take(20)));
    }

    [Fact]
    public void A_name_is_sure_only_when_nothing_else_comes_near()
    {
        NearestName.Guess("limb-diffrence", _lists[0]).ShouldBe(("limb-difference", true));
        NearestName.Guess("find-a", ["find-b", "find-c"])!.Value.Sure.ShouldBeFalse();
        NearestName.Guess("agd", ["age", "sex"])!.Value.Sure.ShouldBeFalse();
        NearestName.Guess("entirely-different", ["age", "sex"]).ShouldBeNull();
    }

    private static string Slip(string name, Random random, bool again = true)
    {
        if (!again || name.Length == 0)
            return name;
        var at = random.Next(name.Length);
        var letter = (char)('a' + random.Next(26));
        return random.Next(4) switch
        {
            0 => name.Remove(at, 1),
            1 => name.Insert(at, letter.ToString()),
            2 => name.Remove(at, 1).Insert(at, letter.ToString()),
            _ => at + 1 < name.Length ? name.Remove(at, 1).Insert(at + 1, name[at].ToString()) : name,
        };
    }
}
