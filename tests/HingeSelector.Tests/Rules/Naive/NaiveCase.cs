using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Naive;

/// <summary>The fact tables of one question and a way to ask for a finding.</summary>
internal sealed class NaiveCase(FactValue[] athlete, FactValue[]? candidate, Func<string, Answer> finding)
{
    public FactValue Look(Word word, int slot) => word.About is WordAbout.Variant or WordAbout.Candidate ? candidate![slot] : athlete[slot];

    public Answer Find(string id) => finding(id);
}
