using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Stockwright.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class SentForms : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "SentForms",
                columns: table => new
                {
                    Key = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Added = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    StoredUtc = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SentForms", x => x.Key);
                });

            migrationBuilder.CreateIndex(
                name: "IX_LogEntries_BatchId_Kind",
                table: "LogEntries",
                columns: new[] { "BatchId", "Kind" });

            migrationBuilder.CreateIndex(
                name: "IX_LogEntries_Corrects",
                table: "LogEntries",
                column: "Corrects");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "SentForms");

            migrationBuilder.DropIndex(
                name: "IX_LogEntries_BatchId_Kind",
                table: "LogEntries");

            migrationBuilder.DropIndex(
                name: "IX_LogEntries_Corrects",
                table: "LogEntries");
        }
    }
}
