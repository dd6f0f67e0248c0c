using System.Data;
using System.Globalization;
using System.Text.Json;
using Dapper;
using TagPage.Core.Customising;
using TagPage.Core.Forecast;
using TagPage.Core.Tags;

namespace TagPage.Records.Storage;

/// <summary>How dates, instants, tag codes and settings stand in the database.</summary>
internal static class TypeHandlers
{
    private static readonly Lock Once = new();
    private static bool _registered;

    public static void Register()
    {
        lock (Once)
        {
            if (_registered)
                return;
            // Dapper's own map would win over a handler on the way in.
            foreach (var type in new[] { typeof(DateOnly), typeof(DateOnly?), typeof(DateTimeOffset), typeof(DateTimeOffset?), typeof(DateTime), typeof(DateTime?) })
                SqlMapper.RemoveTypeMap(type);
            SqlMapper.AddTypeHandler(new DayHandler());
            SqlMapper.AddTypeHandler(new InstantHandler());
            SqlMapper.AddTypeHandler(new WallTimeHandler());
            SqlMapper.AddTypeHandler(new TagCodeHandler());
            SqlMapper.AddTypeHandler(new SettingsHandler<StartingValues>());
            SqlMapper.AddTypeHandler(new SettingsHandler<CustomisingValues>());
            DefaultTypeMap.MatchNamesWithUnderscores = true;
            _registered = true;
        }
    }

    private sealed class DayHandler : SqlMapper.TypeHandler<DateOnly>
    {
        public override void SetValue(IDbDataParameter parameter, DateOnly value) =>
            SetText(parameter, value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

        public override DateOnly Parse(object value) =>
            DateOnly.ParseExact((string)value, "yyyy-MM-dd", CultureInfo.InvariantCulture);
    }

    private sealed class InstantHandler : SqlMapper.TypeHandler<DateTimeOffset>
    {
        private const string Format = "yyyy-MM-ddTHH:mm:ss.fffZ";

        public override void SetValue(IDbDataParameter parameter, DateTimeOffset value) =>
            SetText(parameter, value.UtcDateTime.ToString(Format, CultureInfo.InvariantCulture));

        public override DateTimeOffset Parse(object value) =>
            DateTimeOffset.ParseExact((string)value, Format, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);
    }

    /// <summary>Day and time as the shop's clock shows them, in whole minutes.</summary>
    private sealed class WallTimeHandler : SqlMapper.TypeHandler<DateTime>
    {
        private const string Format = "yyyy-MM-dd HH:mm";

        public override void SetValue(IDbDataParameter parameter, DateTime value) =>
            SetText(parameter, value.ToString(Format, CultureInfo.InvariantCulture));

        public override DateTime Parse(object value) => DateTime.ParseExact((string)value, Format, CultureInfo.InvariantCulture);
    }

    private sealed class TagCodeHandler : SqlMapper.TypeHandler<TagCode>
    {
        public override void SetValue(IDbDataParameter parameter, TagCode value) => SetText(parameter, value.ToString());

        public override TagCode Parse(object value) => TagCode.Read((string)value).Code
            ?? throw new FormatException("A stored tag code does not read as one.");
    }

    private sealed class SettingsHandler<T> : SqlMapper.TypeHandler<T>
    {
        public override void SetValue(IDbDataParameter parameter, T? value) => SetText(parameter, JsonSerializer.Serialize(value));

        public override T? Parse(object value) => JsonSerializer.Deserialize<T>((string)value);
    }

    private static void SetText(IDbDataParameter parameter, string text)
    {
        parameter.DbType = DbType.String;
        parameter.Value = text;
    }
}
