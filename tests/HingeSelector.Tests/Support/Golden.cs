namespace HingeSelector.Tests.Support;

/// <summary>Compares text with a file under tests/golden/. With HINGE_UPDATE_GOLDEN=1 the file is rewritten instead: read the difference before committing it.</summary>
internal static class Golden
{
    public static bool Updates { get; } = Environment.GetEnvironmentVariable("HINGE_UPDATE_GOLDEN") == "1";

    public static void ShouldMatch(string text, string path)
    {
        var full = Path.Combine(RepositoryFiles.Root, "tests/golden", path);
        if (Updates)
            File.WriteAllText(full, text);
        File.Exists(full).ShouldBeTrue($"tests/golden/{path} does not exist; run once with HINGE_UPDATE_GOLDEN=1");
        text.ShouldBe(File.ReadAllText(full), $"tests/golden/{path}");
    }
}
